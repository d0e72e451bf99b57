"""A paper of like make as the site summary, by WeasyPrint: paper.py FOLDER PDF.

FOLDER holds property.json and its photos. The paper has a cover, tables of targets and work, a
schedule of the trees, and a record a tree with its facts, findings and photos.
"""

import json
import pathlib
import sys
from html import escape

import warm

try:
    import weasyprint
except ImportError as cause:
    warm.lacking(cause)
except OSError as cause:
    warm.lacking(cause, "apt-get install libpango-1.0-0 libpangoft2-1.0-0 libharfbuzz-subset0")

folder, target = map(pathlib.Path, sys.argv[1:])

STYLE = """
@page { size: A4; margin: 18mm;
  @bottom-right { content: counter(page) ' / ' counter(pages) } }
body { font: 9pt 'Noto Sans', sans-serif } h1, .chapter, .record { break-before: page }
table { width: 100%; border-collapse: collapse } td, th { text-align: left; padding: 2pt 4pt;
  border-bottom: 0.5pt solid #777 } figure { display: inline-block; width: 40%; margin: 4pt }
img { width: 100% }
"""

# Photos of 800 px and a structure for screen readers, as ours.
OPTIONS = {"optimize_images": True, "jpeg_quality": 75, "dpi": 290, "pdf_variant": "pdf/ua-1"}


def words(value):
    """A value as a reader finds it in a cell."""
    if isinstance(value, dict):
        return ", ".join(f"{words(key)} {words(inner)}" for key, inner in value.items())
    if isinstance(value, list):
        return "; ".join(words(inner) for inner in value)
    return str(value).replace("_", " ")


def table(head, rows):
    def row(cells, tag):
        return "".join(f"<{tag}>{escape(words(cell))}</{tag}>" for cell in cells)

    body = "".join(f"<tr>{row(cells, 'td')}</tr>" for cells in rows)
    return f"<table><thead><tr>{row(head, 'th')}</tr></thead><tbody>{body}</tbody></table>"


def figure(photo):
    said = escape(photo.get("caption", "photo"), quote=True)
    return (f'<figure><img src="{photo["file"]}" alt="{said}">'
            f"<figcaption>{said}</figcaption></figure>")


def record(tree):
    """A tree's facts, walk-round, findings, work and photos of its last look."""
    look = tree["inspections"][-1]
    facts = [(key, value) for key, value in look.items()
             if isinstance(value, (str, dict)) and key not in ("id", "visit", "by", "at")]
    walk = "; ".join(f'{words(at["part"])} {words(at["look"])}' for at in look.get("walk_round", []))
    found = [(finding.get("code", ""), finding.get("part", ""), finding.get("grade", ""),
              finding.get("note", "")) for finding in look.get("findings", [])]
    work = [(each["operation"], each.get("priority", ""), each.get("note", ""))
            for each in tree.get("work", [])]
    return (f'<section class="record"><h2>{escape(tree["tag"])} {escape(tree.get("species", ""))}'
            f'</h2><p>{escape(tree.get("note", ""))}</p>{table(["fact", "value"], facts)}'
            f"<h3>Looked at</h3><p>{escape(walk)}</p>"
            f'<h3>Found</h3>{table(["code", "part", "grade", "note"], found)}'
            f'<h3>Work</h3>{table(["operation", "when", "note"], work)}'
            + "".join(map(figure, look.get("photos", []))) + "</section>")


def paper(site):
    trees = site["trees"]
    targets = [(at["name"], at.get("kind", ""), at.get("occupancy", "")) for at in site["targets"]]
    schedule = [(tree["tag"], tree.get("species", ""), tree.get("way", ""),
                 tree["inspections"][-1].get("height", ""), tree["inspections"][-1].get("girth", ""),
                 [each["operation"] for each in tree.get("work", [])]) for tree in trees]
    return (f'<html lang="en"><head><title>Site summary</title><style>{STYLE}</style></head><body>'
            f'<h1>{escape(site["name"])}</h1><p>{escape(site.get("note", ""))}</p>'
            f'<section class="chapter"><h2>Targets</h2>{table(["name", "kind", "use"], targets)}'
            '</section><section class="chapter"><h2>Schedule</h2>'
            + table(["tag", "species", "way", "height", "girth", "work"], schedule)
            + "</section>" + "".join(map(record, trees)) + "</body></html>")


html = paper(json.loads((folder / "property.json").read_text())["site"])


def printed():
    document = weasyprint.HTML(string=html, base_url=f"{folder}/").render(**OPTIONS)
    document.write_pdf(target, **OPTIONS)
    return {"pages": len(document.pages)}


warm.serve(f"WeasyPrint {weasyprint.__version__}", printed)
