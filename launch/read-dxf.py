"""Reads drawings as DXF with ezdxf, a reader that knows nothing of this project, and holds them to their parts.

    read-dxf.py FOLDER

FOLDER holds pairs NAME.dxf and NAME.json, the JSON as `chargehand part --dxf --json` prints it. Every file must read without a
repair and stand where its part stands; then spoilt copies of each are read, and every one of them must be found out.
"""

import json
import pathlib
import re
import sys
import tempfile
from collections import Counter

import ezdxf
from ezdxf import bbox

LAYERS = {"OUTLINE", "THIN", "HIDDEN", "CENTRE", "STOCK", "HATCH", "DIM", "TEXT", "FRAME"}
ALONE = ("LINE", "CIRCLE", "ARC", "TEXT", "SOLID", "POLYLINE")
NEAR = 1e-5
BROKEN = "The main view is broken"


def counted(text):
    """How many entities of each kind stand in the file, told without the reader."""
    entities = text[text.index("ENTITIES"):]
    return Counter(kind for kind in re.findall(r"\n  0\r?\n([A-Z]+)\r?", entities) if kind in ALONE)


def main_view(document, part):
    """What the visible edges cover that reach into the place of the part; edges that are there already are drawn as stock."""
    covered = bbox.BoundingBox()
    for entity in document.modelspace().query("LINE ARC CIRCLE POLYLINE"):
        box = bbox.extents([entity]) if entity.dxf.layer in ("OUTLINE", "STOCK") else None
        if box and box.has_data and box.extmin.x < part["right"] - NEAR and box.extmax.x > NEAR:
            if box.extmin.y < part["above"] - NEAR and box.extmax.y > NEAR - part["below"]:
                covered.extend([box.extmin, box.extmax])
    return covered


def extent_faults(document, part):
    covered = main_view(document, part)
    if not covered.has_data:
        return ["no visible edge stands where the part does"]
    texts = [text.dxf.text for text in document.modelspace().query("TEXT")]
    broken = any(BROKEN in text for text in texts)
    wanted = {"left": 0.0, "bottom": -part["below"], "top": part["above"], "right": part["right"]}
    found = {"left": covered.extmin.x, "bottom": covered.extmin.y, "top": covered.extmax.y, "right": covered.extmax.x}
    faults = []
    for side, at in wanted.items():
        if broken and side == "right":
            if not found[side] < at - NEAR:
                faults.append(f"said to be broken, but {found[side]} long")
        elif abs(found[side] - at) > NEAR:
            faults.append(f"{side} at {found[side]}, the part at {at}")
    return faults


def faults(file, part):
    text = file.read_text(encoding="ascii", errors="replace")
    try:
        document = ezdxf.readfile(file)
        audit = document.audit()
    except Exception as refusal:  # whatever the reader has against it is what is wanted here
        return [f"not read: {refusal}"]
    found = [f"audit: {entry.message}" for entry in audit.errors + audit.fixes]
    if document.dxfversion != "AC1009":
        found.append(f"release {document.dxfversion}")
    if document.header.get("$INSUNITS", 0) != (1 if part["unit"] == "in" else 4):
        found.append(f"unit {document.header.get('$INSUNITS', 0)} for a part in {part['unit']}")
    names = {layer.dxf.name for layer in document.layers}
    if not LAYERS <= names:
        found.append(f"without the layers {sorted(LAYERS - names)}")
    found += [
        f"layer {layer.dxf.name} is drawn as {layer.dxf.linetype}, which is not defined"
        for layer in document.layers
        if layer.dxf.linetype not in document.linetypes
    ]
    read = Counter(entity.dxftype() for entity in document.modelspace())
    if read != counted(text):
        found.append(f"read {dict(read)}, written {dict(counted(text))}")
    layers = Counter(entity.dxf.layer for entity in document.modelspace())
    found += [f"nothing on {layer}" for layer in ("OUTLINE", "DIM", "TEXT", "FRAME") if layers[layer] < 4]
    found += [f"something on {layer}, which is not defined" for layer in layers if layer not in names]
    return found + extent_faults(document, part)


def swapped(was, becomes, count=0):
    return lambda text: re.sub(was, becomes, text, count=count)


def larger(text):
    """Everything a hundredth larger than it should be."""
    return re.sub(r"( [12][0-3]\r\n)(-?[\d.]+)\r\n", lambda m: f"{m[1]}{float(m[2]) * 1.01:.6f}\r\n", text)


SPOILT = {
    "cut short": lambda text: text[: len(text) * 2 // 3],
    "without its end": swapped(r"  0\r\nEOF\r\n", ""),
    "decimal commas": swapped(r"( 40\r\n\d+)\.", r"\1,", 5),
    "a line of a kind that is not defined": swapped(r"(LINE\r\n  8\r\nDIM\r\n)", r"\1  6\r\nWAVY\r\n", 1),
    "a layer of a kind that is not defined": swapped(r"(CENTRE\r\n 70\r\n0\r\n 62\r\n1\r\n  6\r\n)CENTER", r"\1WAVY"),
    "a layer that is not defined": swapped(r"(LINE\r\n  8\r\n)OUTLINE", r"\1ELSEWHERE", 1),
    "the other unit": lambda text: re.sub(r"(INSUNITS\r\n 70\r\n)(\d)", lambda m: m[1] + ("1" if m[2] == "4" else "4"), text),
    "a later release": swapped("AC1009", "AC1015"),
    "without sizes": swapped(r"  0\r\n(?:LINE|TEXT|SOLID|CIRCLE)\r\n  8\r\nDIM\r\n(?:(?!  0\r\n)...\r\n.*\r\n)*", ""),
    "one per cent too large": larger,
}


def spoilt_faults(file, part, room):
    """Which spoilt copies of a sound file are not found out."""
    text = file.read_bytes().decode("ascii")
    passed = []
    for how, spoil in SPOILT.items():
        copy = pathlib.Path(room, "spoilt.dxf")
        spoilt = spoil(text)
        copy.write_bytes(spoilt.encode("ascii"))
        if spoilt == text or not faults(copy, part):
            passed.append(how)
    return passed


def main(folder):
    files = sorted(pathlib.Path(folder).glob("*.dxf"))
    bad = 0
    with tempfile.TemporaryDirectory() as room:
        for file in files:
            part = json.loads(file.with_suffix(".json").read_text(encoding="utf-8"))["main view"]
            for fault in faults(file, part):
                print(f"dxf: {file.name}: {fault}", file=sys.stderr)
                bad += 1
            for how in spoilt_faults(file, part, room):
                print(f"dxf: {file.name}: a copy spoilt by '{how}' was not found out", file=sys.stderr)
                bad += 1
    if not files:
        print("dxf: nothing to read", file=sys.stderr)
    else:
        print(f"DXF       {len(files)} drawings read by ezdxf {ezdxf.__version__}, {len(SPOILT)} spoilt copies of each found out"
              if not bad else f"DXF       {len(files)} drawings read, {bad} faults")
    return 0 if files and not bad else 1


if __name__ == "__main__":
    sys.exit(main(sys.argv[1]))
