#!/usr/bin/env python3
# SPDX-FileCopyrightText: The Remate authors
# SPDX-License-Identifier: Apache-2.0
"""Checks an unpacked record package with nothing but Python: python3 data/verify.py [the bag's folder]

It checks the bag's digests and file names, and of every ledger: the one spelling of each entry, its digest, its place in
the chain, the key that the register held for its author at that moment, the signature, and that clocks do not run back.
It does not ask whether each entry was allowed: that takes the rules, and so the program.
Ends with 0 when all of that holds, with 1 when something does not.
"""
import base64
import hashlib
import json
import os
import re
import sys

# --- Ed25519, verification alone (RFC 8032, sections 5.1.1 to 5.1.7) ---
P = 2**255 - 19
L = 2**252 + 27742317777372353535851937790883648493
D = -121665 * pow(121666, P - 2, P) % P
ROOT = pow(2, (P - 1) // 4, P)


def point(raw):
    """The point that 32 bytes stand for, in extended coordinates; None when they stand for none."""
    y = int.from_bytes(raw, "little")
    sign, y = y >> 255, y & (2**255 - 1)
    if y >= P:
        return None
    square = (y * y - 1) * pow(D * y * y + 1, P - 2, P) % P
    x = pow(square, (P + 3) // 8, P)
    if (x * x - square) % P:
        x = x * ROOT % P
    if (x * x - square) % P or (x == 0 and sign):
        return None
    x = P - x if x & 1 != sign else x
    return (x, y, 1, x * y % P)


def add(a, b):
    s, t = (a[1] - a[0]) * (b[1] - b[0]), (a[1] + a[0]) * (b[1] + b[0])
    u, v = 2 * a[3] * b[3] * D, 2 * a[2] * b[2]
    e, f, g, h = t - s, v - u, v + u, t + s
    return (e * f % P, g * h % P, f * g % P, e * h % P)


BASE = point(bytes.fromhex("58" + "66" * 31))


def sum_of(n, a, m, b):
    """n times a and m times b, added: both doubled together."""
    both, r = add(a, b), (0, 1, 1, 0)
    for bit in range(max(n.bit_length(), m.bit_length()) - 1, -1, -1):
        r = add(r, r)
        which = (n >> bit & 1) | (m >> bit & 1) << 1
        if which:
            r = add(r, (None, a, b, both)[which])
    return r


def small(q):
    """Whether eight times the point is nothing: such a key signs anything."""
    for _ in range(3):
        q = add(q, q)
    return q[0] % P == 0


def signed(key, message, signature):
    if len(signature) != 64:
        return False
    a, r, s = point(key), point(signature[:32]), int.from_bytes(signature[32:], "little")
    if a is None or r is None or s >= L or small(a) or small(r):
        return False
    k = int.from_bytes(hashlib.sha512(signature[:32] + key + message).digest(), "little") % L
    minus_a = (P - a[0], a[1], 1, P - a[3])
    q = sum_of(s, BASE, k, minus_a)  # must be r
    return (q[0] - r[0] * q[2]) % P == 0 and (q[1] - r[1] * q[2]) % P == 0


# --- the bag (RFC 8493) ---
faults = []


def fault(text):
    faults.append(text)
    print("FAULT", text)


def digest(path):
    h = hashlib.sha256()
    with open(path, "rb") as file:
        for piece in iter(lambda: file.read(1 << 20), b""):
            h.update(piece)
    return h.hexdigest()


def check_manifest(bag, name, present):
    listed = {}
    with open(os.path.join(bag, name), encoding="utf-8") as file:
        for line in file.read().splitlines():
            wanted, path = line.split("  ", 1)
            listed[path] = wanted
    for path in sorted(set(listed) | present):
        if path not in listed:
            fault(f"{name} does not list {path}")
        elif path not in present:
            fault(f"{path} is missing")
        elif digest(os.path.join(bag, path)) != listed[path]:
            fault(f"{path} is not what {name} says")


# --- the ledgers ---
def once(pairs):
    names = [name for name, _ in pairs]
    if len(set(names)) != len(names):
        raise ValueError("a name stands in it twice")
    return dict(pairs)


def canonical(value):
    """RFC 8785 for what an entry may hold: no fractions; names sorted by UTF-16 code units."""
    if isinstance(value, dict):
        members = sorted(value.items(), key=lambda item: item[0].encode("utf-16-be", "surrogatepass"))
        return "{" + ",".join(canonical(name) + ":" + canonical(member) for name, member in members) + "}"
    if isinstance(value, list):
        return "[" + ",".join(canonical(member) for member in value) + "]"
    if isinstance(value, float):
        raise ValueError("a fraction stands in it")
    return json.dumps(value, ensure_ascii=False)


def read_ledger(bag, name):
    with open(os.path.join(bag, name + ".entries.jsonl"), "rb") as file:
        lines = file.read().split(b"\n")
    with open(os.path.join(bag, name + ".signatures.jsonl"), "rb") as file:
        signatures = file.read().split(b"\n")
    if lines.pop() or signatures.pop() or len(lines) != len(signatures):
        fault(f"{name}: the two files do not go together line by line")
    entries = []
    for number, (line, beside) in enumerate(zip(lines, signatures), 1):
        try:
            said = json.loads(line.decode("utf-8"), object_pairs_hook=once)
            signature = json.loads(beside.decode("utf-8"), object_pairs_hook=once)
            if canonical(said).encode("utf-8") != line or canonical(signature).encode("utf-8") != beside:
                raise ValueError("not in its one spelling")
            if set(signature) != {"hash", "seq", "signature"} or said["v"] != 1:
                raise ValueError("other members than it has")
            raw = base64.b64decode(signature["signature"], validate=True)
            entries.append((number, line, said, signature["hash"], signature["seq"], raw))
        except (ValueError, KeyError, TypeError) as error:
            fault(f"{name}, entry {number}: {error}")
    if not entries:
        fault(f"{name}: there is not one entry")
    return entries


def check_ledger(name, entries, key_of, ledger=None):
    """Chain, place, digest, key and signature. Returns the digests by number."""
    before, moment, hashes = "0" * 64, "", {}
    for number, line, said, hash_beside, seq_beside, signature in entries:
        where = f"{name}, entry {number}"
        ledger = ledger or said["ledger"]
        here = hashlib.sha256(line).hexdigest()
        if hash_beside != here:
            fault(f"{where}: the digest beside it is not that of its bytes")
        if said["ledger"] != ledger or said["seq"] != number or seq_beside != number:
            fault(f"{where}: it belongs to another place")
        if said["prev"] != before:
            fault(f"{where}: it does not name the entry before it")
        if said["at"] < moment:
            fault(f"{where}: the clock runs back")
        key = key_of(said)
        if key is None or hashlib.sha256(key).hexdigest() != said["key"]:
            fault(f"{where}: the register held no such key for {said['author']}")
        elif not signed(key, line, signature):
            fault(f"{where}: the signature is not {said['author']}'s over these bytes")
        before, moment, hashes[number] = here, said["at"], here
        if number % 500 == 0:
            print(f"{name}: {number} of {len(entries)}", file=sys.stderr)
    return hashes


def main():
    bag = sys.argv[1] if len(sys.argv) > 1 else "."
    present = set()
    if not os.path.isfile(os.path.join(bag, "manifest-sha256.txt")):
        print("This is no bag:", os.path.abspath(bag))
        return 1
    for folder, _, files in os.walk(bag):
        present |= {os.path.relpath(os.path.join(folder, file), bag).replace(os.sep, "/") for file in files}
    tags = {"bagit.txt", "bag-info.txt", "manifest-sha256.txt", "tagmanifest-sha256.txt"}
    for path in sorted(present):
        if not path.startswith("data/") and path not in tags:
            fault(f"{path} does not belong into the bag")
    check_manifest(bag, "manifest-sha256.txt", {path for path in present if path.startswith("data/")})
    check_manifest(bag, "tagmanifest-sha256.txt", (present & tags) - {"tagmanifest-sha256.txt"})
    for path in sorted(present):
        name = re.fullmatch(r"data/attachments/([0-9a-f]{64})\.(jpg|png|pdf|bin)", path)
        if path.startswith("data/attachments/") and (not name or digest(os.path.join(bag, path)) != name.group(1)):
            fault(f"{path} is not what its name says")

    with open(os.path.join(bag, "bagit.txt"), "rb") as file:
        if file.read() != b"BagIt-Version: 1.0\nTag-File-Character-Encoding: UTF-8\n":
            fault("bagit.txt is not that of BagIt 1.0")

    keys = {}  # person -> [(number of the register entry, key)]

    def note_key(said):
        if said["kind"] in ("register.founded", "person.enrolled", "key.replaced"):
            person = said["author"] if said["kind"] == "register.founded" else said["subject"]
            keys.setdefault(person, []).append((said["seq"], bytes.fromhex(said["body"]["public_key"])))

    def key_at(person, seq):
        held = [key for since, key in keys.get(person, []) if since <= seq]
        return held[-1] if held else None

    moments = {}  # of the register's entries, by number

    def register_key(said):
        key = bytes.fromhex(said["body"]["public_key"]) if said["kind"] == "register.founded" and said["seq"] == 1 else key_at(said["author"], said["seq"] - 1)
        note_key(said)
        moments[said["seq"]] = said["at"]
        return key

    register = check_ledger("data/register", read_ledger(bag, "data/register"), register_key)
    pins = {}  # what entries name of other ledgers: (ledger, number) -> digest

    def job_key(said):
        pin = said["register"]
        if pin is None or register.get(pin["seq"]) != pin["hash"]:
            fault(f"entry {said['seq']} of {said['ledger']}: the register entry that it names is not in the register")
        elif said["at"] < moments[pin["seq"]]:
            fault(f"entry {said['seq']} of {said['ledger']}: it is earlier than the register entry that it names")
        elif said["at"] > moments.get(pin["seq"] + 1, said["at"]):
            fault(f"entry {said['seq']} of {said['ledger']}: it is later than a register entry that it does not know of")
        for one in said.get("linked", []):
            pins[(one["ledger"], one["seq"])] = one["hash"]
        return key_at(said["author"], pin["seq"]) if pin else None

    names = ["data/job"] + sorted(path[: -len(".entries.jsonl")] for path in present if re.fullmatch(r"data/linked/.*\.entries\.jsonl", path))
    ledgers, counts, last, named = {}, {}, None, set()
    for name in names:
        entries = read_ledger(bag, name)
        hashes = check_ledger(name, entries, job_key, None if name == "data/job" else name[len("data/linked/") :])
        if entries:
            ledgers[entries[0][2]["ledger"]] = hashes
        named |= {said["body"]["sha256"] for _, _, said, _, _, _ in entries if isinstance(said["body"].get("sha256"), str)}
        last = last or (entries[-1] if entries else None)
        counts[name] = len(entries)
    for (ledger, number), wanted in sorted(pins.items()):
        if ledgers.get(ledger, {}).get(number) != wanted:
            fault(f"entry {number} of the linked ledger {ledger} is not the one that is pinned")

    held = {os.path.basename(path).split(".")[0] for path in present if path.startswith("data/attachments/")}
    for missing in sorted(named - held):
        fault(f"an entry names the attachment {missing}, which is missing")
    for extra in sorted(held - named):
        fault(f"no entry names the attachment {extra}")

    print("entries:", ", ".join(f"{name} {count}" for name, count in counts.items()), f"data/register {len(register)}")
    print("root:", register.get(1, "none"))
    if last:
        print("head:", last[0], last[3], "- closed" if last[2]["kind"] == "job.closed" else "- NOT CLOSED")
    print("The digests, the chain and the signatures hold. Whether each entry was allowed was not asked." if not faults else f"faults: {len(faults)}")
    return 1 if faults else 0


if __name__ == "__main__":
    sys.exit(main())
