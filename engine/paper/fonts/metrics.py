# Every table of the font but its outlines, as they stand.
import struct, sys
data = open(sys.argv[1], "rb").read()
count = struct.unpack(">H", data[4:6])[0]
tables = [(data[12 + 16 * k:16 + 16 * k], *struct.unpack(">III", data[16 + 16 * k:28 + 16 * k])) for k in range(count)]
kept = [(tag, check, data[at:at + size]) for tag, check, at, size in tables if tag != b"CFF "]
power = 1 << (len(kept).bit_length() - 1)
head = data[:4] + struct.pack(">HHHH", len(kept), 16 * power, power.bit_length() - 1, 16 * (len(kept) - power))
at = 12 + 16 * len(kept)
body = b""
for tag, check, table in kept:
    head += tag + struct.pack(">III", check, at + len(body), len(table))
    body += table + b"\0" * (-len(table) % 4)
open(sys.argv[2], "wb").write(head + body)
