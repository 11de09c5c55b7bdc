"""Reads cutting files with ezdxf, audits them, and prints what they hold as JSON."""

import json
import sys
from collections import Counter, defaultdict

import ezdxf
from ezdxf import path
from ezdxf.lldxf.encoding import decode_dxf_unicode
from ezdxf.math import area
from ezdxf.tools.text import caret_decode

FLAT = 0.001


def said(text):
    """What is written, by the decoders that this library has for it; opening a file it leaves them out."""
    return caret_decode(decode_dxf_unicode(text))


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


def read(file):
    """What a file holds, and what the audit says of it."""
    doc = ezdxf.readfile(file)
    audit = doc.audit()
    blocks = {}
    for insert in doc.modelspace().query("INSERT"):
        block = doc.blocks.get(insert.dxf.name)
        lengths = defaultdict(float)
        for entity in block.query('*[layer=="STITCH"]'):
            points = flattened(entity)
            lengths[name_of(entity)] += sum(a.distance(b) for a, b in zip(points, points[1:]))
        cut = [flattened(entity) for entity in block.query('*[layer=="CUT"]')]
        blocks[insert.dxf.name] = {
            "attributes": {one.dxf.tag: said(one.dxf.text) for one in insert.attribs},
            "layers": Counter(one.dxf.layer for one in block if one.dxftype() != "ATTDEF"),
            "area": closed_area(cut),
            "lengths": lengths,
            "words": [said(one.dxf.text) for one in block.query("TEXT")],
        }
    return {
        "version": doc.dxfversion,
        "units": doc.header.get("$INSUNITS"),
        "errors": [one.message for one in audit.errors],
        "fixes": [one.message for one in audit.fixes],
        "layers": [layer.dxf.name for layer in doc.layers],
        "blocks": blocks,
    }


print(json.dumps([read(file) for file in sys.argv[1:]]))
