"""Settings that outlive who wrote them, as JSON would."""

import json
from typing import Any


class Memory:
    """`kept`: JSON text by key."""

    def __init__(self, **kept: Any) -> None:
        self.kept = {key: json.dumps(value) for key, value in kept.items()}

    def get_setting(self, key: str, default: Any = None) -> Any:
        return json.loads(self.kept[key]) if key in self.kept else default

    def put_setting(self, key: str, value: Any) -> None:
        self.kept[key] = json.dumps(value, allow_nan=False)
