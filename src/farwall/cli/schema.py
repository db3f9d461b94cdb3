"""`farwall schema job|plan|so-far|van`: JSON Schemas made from the nouns that judge the files."""

from __future__ import annotations

import argparse
import json


def arguments(parser: argparse.ArgumentParser) -> None:
    """The words that `farwall schema` takes."""
    parser.add_argument(
        "what", choices=("job", "plan", "so-far", "van"), help="which file's schema"
    )
    parser.add_argument("--json", action="store_true", help="as it is anyway: one JSON document")


def run(options: argparse.Namespace) -> int:
    """Print the schema."""
    from farwall.readers.schemas import job_schema, plan_schema, so_far_schema, van_schema

    schemas = {"job": job_schema, "plan": plan_schema, "so-far": so_far_schema, "van": van_schema}
    print(json.dumps(schemas[options.what](), indent=1, ensure_ascii=False))
    return 0
