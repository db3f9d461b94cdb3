"""`farwall schema job|plan`: their JSON Schemas, made from the nouns that judge the files."""

from __future__ import annotations

import argparse
import json


def arguments(parser: argparse.ArgumentParser) -> None:
    """The words that `farwall schema` takes."""
    parser.add_argument("what", choices=("job", "plan"), help="which file's schema")
    parser.add_argument("--json", action="store_true", help="as it is anyway: one JSON document")


def run(options: argparse.Namespace) -> int:
    """Print the schema."""
    from farwall.readers.schemas import job_schema, plan_schema

    schema = job_schema() if options.what == "job" else plan_schema()
    print(json.dumps(schema, indent=1, ensure_ascii=False))
    return 0
