"""Rings of wood as polygons, measured by sectionproperties (finite elements) and shapely.

Reads a list of rings as JSON: outer and wall as [bearing, length] pairs, opening as
[middle, width] or null. Writes area, centroid, second moments and the weakest modulus of each.
"""

import json
import sys

import numpy as np
from sectionproperties.analysis import Section
from sectionproperties.pre import Geometry
from shapely.geometry import Polygon

CORNERS = 1440


def run(pairs, bearings):
    """The length at each bearing, linear between the given ones."""
    given = np.array(sorted(pairs), dtype=float)
    return np.interp(bearings, given[:, 0], given[:, 1], period=360.0)


def outline(bearings, lengths):
    """Corners east and north; bearings run clockwise from north."""
    turn = np.radians(bearings)
    return np.column_stack([lengths * np.sin(turn), lengths * np.cos(turn)])


def polygon(ring):
    """The sound wood as a polygon."""
    opening = ring["opening"]
    if opening is None:
        bearings = np.linspace(0.0, 360.0, CORNERS, endpoint=False)
    else:
        middle, width = opening
        bearings = np.linspace(middle + width / 2, middle - width / 2 + 360.0, CORNERS)
    rim = run(ring["outer"], bearings)
    hollow = rim - run(ring["wall"], bearings)
    outer, inner = outline(bearings, rim), outline(bearings, hollow)
    if opening is None:
        return Polygon(outer, [inner]), outer
    return Polygon(np.vstack([outer, inner[::-1]])), outer


def measured(ring):
    """What the library says about one ring."""
    shape, rim = polygon(ring)
    section = Section(Geometry(shape).create_mesh(mesh_sizes=[shape.area / 200]))
    section.calculate_geometric_properties()
    east, north = section.get_c()
    xx, yy, xy = section.get_ic()
    # ∫y² = xx, ∫x² = yy: stress at p for a unit moment bending toward u is p · J⁻¹ u, so that the
    # worst direction for a rim point gives |J⁻¹ p|.
    inertia = np.array([[yy, xy], [xy, xx]])
    stress = np.linalg.solve(inertia, (rim - [east, north]).T)
    weakest = 1.0 / np.max(np.hypot(stress[0], stress[1]))
    return {
        "area": section.get_area(),
        "east": east,
        "north": north,
        "xx": xx,
        "yy": yy,
        "xy": xy,
        "weakest": weakest,
    }


if __name__ == "__main__":
    json.dump([measured(ring) for ring in json.load(sys.stdin)], sys.stdout)
