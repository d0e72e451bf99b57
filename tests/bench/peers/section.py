"""The properties of one ring of wood by sectionproperties: section.py RING CORNERS."""

import json
import pathlib
import sys
from importlib.metadata import version

import warm

sys.path.insert(0, str(pathlib.Path(__file__).parents[2] / "outside" / "peers"))
try:
    import sections
except ImportError as cause:
    warm.lacking(cause)

ring = json.loads(sys.argv[1])
sections.CORNERS = int(sys.argv[2])

warm.serve(f"sectionproperties {version('sectionproperties')}", lambda: sections.measured(ring))
