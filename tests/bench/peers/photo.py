"""A photo turned upright, with copies of 2,048 px and 320 px, by Pillow: photo.py PHOTO FOLDER."""

import pathlib
import sys

import warm

try:
    import PIL
    from PIL import Image, ImageOps
except ImportError as cause:
    warm.lacking(cause)

source, folder = map(pathlib.Path, sys.argv[1:])


def fitted(picture, longest):
    width, height = picture.size
    scale = longest / max(width, height)
    size = (round(width * scale), round(height * scale))
    return picture.resize(size, Image.Resampling.LANCZOS)


def copies():
    with Image.open(source) as photo:
        upright = ImageOps.exif_transpose(photo)
    view = fitted(upright, 2048)
    small = fitted(view, 320)
    view.save(folder / "view.jpg", quality=85)
    small.save(folder / "small.jpg", quality=78)
    return [view.size, small.size]


warm.serve(f"Pillow {PIL.__version__}", copies)
