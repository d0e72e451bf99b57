"""Geodesic lines, points and circles by pyproj (PROJ) and shapely (GEOS).

Reads {"lines": [[lat, lon, lat, lon]], "points": [[lat, lon, azimuth, distance]],
"circles": [{"lat", "lon", "radius", "outline": [[lat, lon]]}]} and answers in the same order;
for a circle with its nearest and farthest side in metres and its area.
"""

import json
import sys

from pyproj import Geod, Transformer
from shapely.geometry import Point, Polygon

GEOD = Geod(ellps="WGS84")


def line(lat, lon, to_lat, to_lon):
    """Distance and both azimuths."""
    azimuth, back, distance = GEOD.inv(lon, lat, to_lon, to_lat)
    return [distance, azimuth % 360.0, (back + 180.0) % 360.0]


def point(lat, lon, azimuth, distance):
    """Where the line ends."""
    to_lon, to_lat, _ = GEOD.fwd(lon, lat, azimuth, distance)
    return [to_lat, to_lon]


def circle(given):
    """The outline on a plane that keeps distances from its middle (azimuthal equidistant)."""
    plane = Transformer.from_crs(
        "EPSG:4326",
        f"+proj=aeqd +lat_0={given['lat']} +lon_0={given['lon']} +ellps=WGS84",
        always_xy=True,
    )
    corners = [plane.transform(lon, lat) for lat, lon in given["outline"]]
    shape = Polygon(corners)
    middle = Point(0.0, 0.0)
    round_disc = middle.buffer(given["radius"], quad_segs=360)
    return {
        "valid": shape.is_valid and shape.contains(middle),
        "nearest": shape.exterior.distance(middle),
        "farthest": max(middle.distance(Point(corner)) for corner in corners),
        "area": shape.area,
        "uncovered": round_disc.difference(shape).area,
        "geodesic_area": abs(
            GEOD.polygon_area_perimeter(
                [lon for _, lon in given["outline"]], [lat for lat, _ in given["outline"]]
            )[0]
        ),
    }


asked = json.load(sys.stdin)
json.dump(
    {
        "lines": [line(*row) for row in asked["lines"]],
        "points": [point(*row) for row in asked["points"]],
        "circles": [circle(row) for row in asked["circles"]],
    },
    sys.stdout,
)
