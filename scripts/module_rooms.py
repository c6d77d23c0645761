#!/usr/bin/env python3
"""What the page's modules are made of: code by the engine's rooms, and data.

Usage: scripts/module_rooms.py MODULE [FOLDER]
MODULE was built with -DSTRINGCOURSE_MEASURE=ON, in FOLDER (default: the module's), beside the rooms' libraries.
Prints `room kB packed_kB`, the largest first: packed is what gzip makes of the room's own code; all of it together packs
a little better. A function that several rooms make (a template) counts for the last of them that engine/layers.txt names;
what no room names is the "library".
"""
import gzip
import subprocess
import sys
from pathlib import Path


def read_number(data, at):
    """An unsigned LEB128 number, and the place behind it."""
    value = shift = 0
    while True:
        byte = data[at]
        at += 1
        value |= (byte & 0x7F) << shift
        shift += 7
        if byte < 0x80:
            return value, at


def sections(data):
    at = 8
    while at < len(data):
        kind = data[at]
        size, start = read_number(data, at + 1)
        yield kind, start, start + size
        at = start + size


def imported_functions(data, at):
    count, at = read_number(data, at)
    functions = 0
    for _ in range(count):
        for _ in range(2):
            size, at = read_number(data, at)
            at += size
        kind, at = data[at], at + 1
        if kind != 0:
            sys.exit("module_rooms: an import is no function")
        functions += 1
        _, at = read_number(data, at)
    return functions


def bodies(data, at):
    count, at = read_number(data, at)
    for _ in range(count):
        size, start = read_number(data, at)
        yield data[start : start + size]
        at = start + size


def function_names(data, at, end):
    """Of the name section: index -> name."""
    names = {}
    size, at = read_number(data, at)
    if data[at : at + size] != b"name":
        return names
    at += size
    while at < end:
        kind = data[at]
        size, at = read_number(data, at + 1)
        if kind == 1:
            count, here = read_number(data, at)
            for _ in range(count):
                index, here = read_number(data, here)
                length, here = read_number(data, here)
                names[index] = data[here : here + length].decode()
                here += length
        at += size
    return names


def rooms_of_symbols(folder):
    """Symbol -> the last room that defines it."""
    layers = Path(__file__).resolve().parent.parent / "engine" / "layers.txt"
    rooms = [line.split()[0] for line in layers.read_text().splitlines() if line[:1].isalpha()]
    known = {}
    for room, library in [(room, f"libengine_{room}.a") for room in rooms] + [("border", "wasm/libborder.a")]:
        told = subprocess.run(
            ["llvm-nm-22", "--defined-only", "--demangle", "--format=just-symbols", folder / library],
            capture_output=True, text=True, check=True,
        )
        for symbol in told.stdout.splitlines():
            known[symbol] = room
    return known


def main():
    module = Path(sys.argv[1])
    folder = Path(sys.argv[2]) if len(sys.argv) > 2 else module.parent
    data = module.read_bytes()
    known = rooms_of_symbols(folder)
    code, names, imports, other = [], {}, 0, {}
    for kind, start, end in sections(data):
        if kind == 2:
            imports = imported_functions(data, start)
        elif kind == 10:
            code = list(bodies(data, start))
        elif kind == 11:
            other["data"] = data[start:end]
        elif kind == 0:
            names |= function_names(data, start, end)
    if not names:
        sys.exit("module_rooms: the module has no names: build it with -DSTRINGCOURSE_MEASURE=ON")
    by_room = {}
    for index, body in enumerate(code):
        room = known.get(names.get(imports + index, "").split(" (.")[0], "library")
        by_room.setdefault(room, bytearray()).extend(body)
    rows = {**by_room, **other, "all code": b"".join(code)}
    for room, content in sorted(rows.items(), key=lambda row: -len(row[1])):
        print(f"{room} {len(content) / 1000:.1f} {len(gzip.compress(bytes(content), 9)) / 1000:.1f}")


main()
