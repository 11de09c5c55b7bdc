"""Reads a cutting file with ezdxf, audits it, and prints what it holds as JSON."""

import json
import sys
from collections import Counter, defaultdict

import ezdxf
from ezdxf import path
from ezdxf.math import area

FLAT = 0.001
doc = ezdxf.readfile(sys.argv[1])
audit = doc.audit()


def flattened(entity):
    return list(path.make_path(entity).flattening(FLAT))


def closed_area(chains):
    """The area within chains that follow each other."""
    points = [point for chain in chains for point in chain[:-1]]
    return abs(area(points))


def name_of(entity):
    if not entity.has_xdata("BODKIN"):
        return ""
    names = [tag.value for tag in entity.get_xdata("BODKIN") if tag.code == 1000]
    return next((name[6:] for name in names if name.startswith("edge: ")), "")


blocks = {}
for insert in doc.modelspace().query("INSERT"):
    block = doc.blocks.get(insert.dxf.name)
    lengths = defaultdict(float)
    for entity in block.query('*[layer=="STITCH"]'):
        points = flattened(entity)
        lengths[name_of(entity)] += sum(a.distance(b) for a, b in zip(points, points[1:]))
    cut = [flattened(entity) for entity in block.query('*[layer=="CUT"]')]
    blocks[insert.dxf.name] = {
        "attributes": {one.dxf.tag: one.dxf.text for one in insert.attribs},
        "layers": Counter(one.dxf.layer for one in block if one.dxftype() != "ATTDEF"),
        "area": closed_area(cut),
        "lengths": lengths,
        "words": [one.plain_text() for one in block.query("TEXT")],
    }

print(
    json.dumps(
        {
            "version": doc.dxfversion,
            "units": doc.header.get("$INSUNITS"),
            "errors": [one.message for one in audit.errors],
            "fixes": [one.message for one in audit.fixes],
            "layers": [layer.dxf.name for layer in doc.layers],
            "blocks": blocks,
        }
    )
)
