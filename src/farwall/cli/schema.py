"""`farwall schema`: JSON Schemas of job, plan, day so far, van and wares, made from the nouns."""

from __future__ import annotations

import argparse
import json


def arguments(parser: argparse.ArgumentParser) -> None:
    """The words that `farwall schema` takes."""
    parser.add_argument(
        "what", choices=("job", "plan", "so-far", "van", "wares"), help="which file's schema"
    )
    parser.add_argument("--json", action="store_true", help="as it is anyway: one JSON document")


def run(options: argparse.Namespace) -> int:
    """Print the schema."""
    from farwall.readers import schemas

    made = {
        "job": schemas.job_schema, "plan": schemas.plan_schema, "so-far": schemas.so_far_schema,
        "van": schemas.van_schema, "wares": schemas.wares_schema,
    }  # fmt: skip
    print(json.dumps(made[options.what](), indent=1, ensure_ascii=False))
    return 0
