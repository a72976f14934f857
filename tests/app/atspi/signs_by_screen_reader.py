#!/usr/bin/python3
# SPDX-FileCopyrightText: The Remate authors
# SPDX-License-Identifier: Apache-2.0
"""signs_by_screen_reader.py REMATE REMATE-CLI FOLDER

Somebody who sees no screen puts a connector back on: the real program, worked from another process through the
accessibility bus and the keyboard alone. It is killed half-way, and what was typed is taken up again. What the entry says is then asked
of the command line.

What every control owes whoever cannot see it: WCAG 2.2, 4.1.2 (name, role, value), 2.1.1 (keyboard), 2.4.3 (focus order).
"""

import csv
import io
import json
import os
import re
import shutil
import subprocess
import sys

from desk import desk, running

REMATE, CLI, FOLDER = sys.argv[1:]
STORE = os.path.join(FOLDER, "demo.remate")
BEGUN = os.path.join(os.environ["XDG_STATE_HOME"], "remate", "begun")
JOB = "WO-2207-14"
ITEM, NAME = "W05", "Fuel flow transmitter"
SIGNER = "novak"
RETURN = 0xFF0D  # XK_Return
ESCAPE = 0xFF1B  # XK_Escape
# What ends in these dots asks for something first: it opens a dialog.
ASKS = "…"


def cli(*arguments):
    done = subprocess.run([CLI, *arguments], text=True, capture_output=True, check=False)
    assert done.returncode == 0, f"{arguments}: {done.returncode}\n{done.stdout}{done.stderr}"
    return done.stdout


def make_demo():
    """A fresh demo store. Returns the signer's name and PIN as the demo prints them."""
    for left in (STORE, STORE + "-wal", STORE + "-shm"):
        if os.path.exists(left):
            os.remove(left)
    shutil.rmtree(BEGUN, ignore_errors=True)
    for line in cli("demo", STORE).splitlines():
        if line.startswith(SIGNER + " "):
            _, pin, rest = line.split(maxsplit=2)
            return re.split(r"\s{2,}", rest)[0], pin
    raise AssertionError(f"the demo has no {SIGNER}")


def listed():
    """The item's row in the list, as it is exported."""
    return next(row for row in csv.DictReader(io.StringIO(cli("list-export", "--job", JOB, STORE))) if row["id"] == ITEM)


class Shift:
    """The steps of the story, one after the other on one window."""

    def __init__(self, reader, process):
        self.reader = reader
        self.app = reader.program(process)
        self.window = reader.find(self.app, "frame", "demo")
        self.reports = reader.FocusReports()
        self.faults = []

    def look_round(self, where, shown=None):
        """Every control that is shown says what it is and what it is for."""
        self.faults += [f"{where}: {fault}" for fault in self.reader.untold(shown or self.window)]

    def keyboard_is_at(self, what, where):
        """The keyboard is there, and that is the last that a tool was told."""
        reader = self.reader

        def ask():
            at = reader.focused(where)
            return at is not None and reader.words(at).startswith(what)

        reader.wait_for(f"the keyboard at {what}", ask)
        reader.wait_for(f"told at last that the keyboard is at {what}; told was {self.reports.names}",
                        lambda: self.reports.names and self.reports.names[-1].startswith(what))

    def go_to(self, page):
        self.reports.forget()
        self.reader.press(self.reader.find(self.window, "radio button", page), "Toggle")

    def open_job(self):
        reader = self.reader
        card = reader.find(self.window, "list item", "Engine change")
        loose = cli_loose_ends()
        assert f"{loose} loose ends" in reader.name(card), f"a card does not say what is loose: {reader.name(card)}"
        self.look_round("jobs")
        reader.wait_for("the keyboard at the job", lambda: reader.focused(self.window) is not None)
        reader.key(RETURN)
        reader.find(self.window, "table", "Interfaces")
        self.look_round("list")

    def look_at_every_page(self):
        reader = self.reader
        pages = [node for node in reader.showing(self.window) if reader.role(node) == "radio button"]
        assert len(pages) > 10, f"only {len(pages)} pages are told"
        for page in pages[1:] + pages[:1]:  # the first is shown already
            self.reports.forget()
            reader.press(page, "Toggle")
            reader.wait_for(f"{reader.words(page)} to be down", lambda page=page: reader.has(page, reader.Atspi.StateType.CHECKED))
            reader.wait_for(f"the keyboard on {reader.words(page)}", lambda: self.reports.names)
            told = reader.focused(self.window)
            if told is None or not reader.name(told):
                self.faults.append(f"{reader.name(page)}: the keyboard is at {told and reader.words(told)}")
            if not self.reports.names[-1].endswith('"') or self.reports.names[-1].endswith('""'):
                self.faults.append(f"{reader.name(page)}: told last that the keyboard is at {self.reports.names[-1]}")
            self.look_round(reader.name(page))

    def boxes(self):
        """What lies over the window: sheets, dialogs and questions."""
        reader = self.reader
        return [node for node in reader.children(self.app) if reader.is_showing(node) and node != self.window and reader.role(node) in ("dialog", "alert", "file chooser")]

    def look_at_every_dialog(self):
        """All that the menus open: told as everything else, and Escape leaves it without anything done."""
        reader = self.reader
        bar = reader.find(self.window, "menu bar", "")
        asking = [reader.name(item) for item in reader.items_of_menus(bar) if reader.name(item).endswith(ASKS) and reader.has(item, reader.Atspi.StateType.ENABLED)]
        assert len(asking) > 12, f"only these ask for something: {asking}"
        for words in asking:
            reader.press_what_asks(reader.within_menus(bar, words))
            box = reader.wait_for(f"what “{words}” opens", self.boxes)[0]
            if not reader.name(box) and reader.role(box) != "alert":
                self.faults.append(f"{words}: a dialog without a name")
            if not reader.found(box, "label", "Look in:"):  # the toolkit's own box for files is not ours to name
                self.look_round(words, box)
            reader.wait_for(f"the keyboard in what “{words}” opens", lambda box=box: reader.focused(box))
            reader.key(ESCAPE)
            reader.wait_for(f"Escape to close what “{words}” opens", lambda: not self.boxes())

    def read_loose_ends(self):
        """All of them, cell by cell, are what the command line says."""
        self.go_to("Loose ends")
        table = self.reader.find(self.window, "table", "Loose ends")
        titles, *rows = self.reader.rows(table)
        assert titles == ["Item", "What is loose", "Who can clear it"], titles
        assert len(rows) == cli_loose_ends(), f"{len(rows)} rows are told, {cli_loose_ends()} are loose"
        assert all("" not in row[1:] for row in rows), "a cell says nothing"
        assert [ITEM, f"{NAME} is disconnected."] in [row[:2] for row in rows], "the connector is not told as loose"

    def choose(self):
        self.go_to("List")
        reader = self.reader
        table = reader.find(self.window, "table", "Interfaces")
        self.keyboard_is_at("table", self.window)
        assert self.stage() == "Disconnected", self.stage()
        items = [row[1] for row in reader.rows(table)][1:]
        assert table.get_table_iface().add_row_selection(items.index(ITEM)), "the row was not chosen"
        reader.find(self.window, "label", ITEM)
        greyed = reader.find(self.window, "push button", "Disconnect")
        assert "is disconnected already" in greyed.get_description(), f"greyed without a reason: {greyed.get_description()}"
        self.look_round("the item's card")

    def stage(self):
        table = self.reader.find(self.window, "table", "Interfaces")
        return next(row[0] for row in self.reader.rows(table) if row[1] == ITEM)

    def sheet(self):
        return self.reader.wait_for("a sheet", lambda: next(
            (node for node in self.reader.children(self.app) if self.reader.role(node) == "dialog" and self.reader.is_showing(node)), None))

    def begin(self):
        reader = self.reader
        self.reports.forget()
        reader.press(reader.find(self.window, "push button", "Reconnect"))
        sheet = self.sheet()
        assert reader.name(sheet) == f"Reconnect: {ITEM} {NAME}", reader.name(sheet)
        return sheet

    def begin_and_be_killed(self, process):
        """The program dies under the hands of whoever types."""
        reader = self.reader
        sheet = self.begin()
        self.keyboard_is_at('text "Tag recovered"', sheet)
        self.look_round("the sheet", sheet)
        reader.type_into(reader.find(sheet, "text", "Tag recovered"), "23")
        reader.wait_for("what was typed to be kept", lambda: any(file.endswith(".json") for file in os.listdir(BEGUN)) if os.path.isdir(BEGUN) else False)
        process.kill()
        process.wait(reader.PATIENCE)

    def take_up_and_sign(self, row, name, pin):
        reader = self.reader
        sheet = self.begin()
        self.keyboard_is_at('push button "Take it up"', sheet)
        self.look_round("the sheet that was begun", sheet)
        tag = reader.find(sheet, "text", "Tag recovered")
        assert reader.text_of(tag) == "", f"filled in unasked: {reader.text_of(tag)}"
        reader.press(reader.find(sheet, "push button", "Take it up"))
        reader.wait_for("what was typed before", lambda: reader.text_of(tag) == "23")
        assert reader.found(sheet, "label", "Isolate and tag the electrical power first"), "the caution is not told"
        sign = reader.find(sheet, "push button", "Sign")
        assert not reader.has(sign, reader.Atspi.StateType.ENABLED), "it can be signed before anybody said who signs"
        typed = {"Blanks removed from the aircraft's end": "0", "Aircraft half": row["aircraft_half"], "Unit half": row["unit_half"]}
        for label, text in typed.items():
            reader.type_into(reader.find(sheet, "text", label), text)
        reader.type_into(reader.find(sheet, "text", "Who signs"), name)
        reader.find(sheet, "label", f"{name} signs")
        # Rules speak while it is filled in, and fall silent once it is right.
        refusal = reader.find(sheet, "label", "1 blanks were fitted")
        reader.type_into(reader.find(sheet, "text", "Blanks removed from the aircraft's end"), "1")
        reader.wait_for("the refusal to be gone", lambda: not reader.is_showing(refusal))
        secret = reader.find(sheet, "password text", "PIN")
        reader.type_into(secret, pin)
        assert pin not in reader.text_of(secret), "the PIN is read aloud"
        reader.wait_for(lambda: f"Sign to be free; the sheet says {[reader.words(node) for node in reader.showing(sheet)]}",
                        lambda: reader.has(sign, reader.Atspi.StateType.ENABLED))
        reader.press(sign)
        reader.wait_for("the sheet to be gone", lambda: not any(reader.role(node) == "dialog" for node in reader.children(self.app)))
        reader.wait_for("the new stage in the list", lambda: self.stage() not in ("Disconnected", ""))

    def quit(self):
        """By the menu, which need not be open to be read."""
        bar = self.reader.find(self.window, "menu bar", "")
        self.reader.press(self.reader.within_menus(bar, "Quit"))


def cli_loose_ends():
    done = subprocess.run([CLI, "loose-ends", "--job", JOB, "--json", STORE], text=True, capture_output=True, check=False)
    return len(json.loads(done.stdout)["loose_ends"])


def check_the_store(row):
    item = next(item for item in json.loads(cli("show", "--job", JOB, "--json", STORE))["interfaces"] if item["id"] == ITEM)
    assert item["stage"] == "secured", item
    entries = json.loads(cli("timeline", "--job", JOB, "--kind", "interface.reconnected", "--person", SIGNER, "--json", STORE))["entries"]
    entry = entries[-1]
    assert (entry["subject"], entry["author"], entry["standing"]) == (ITEM, SIGNER, "stands"), entry
    assert entry["body"]["tag_recovered"] == "23" and entry["body"]["aircraft_half"] == row["aircraft_half"], entry
    cli("verify", STORE)


def main():
    name, pin = make_demo()
    row = listed()
    with desk():
        import reader  # pylint: disable=import-outside-toplevel; it joins the bus that is there now

        with running([REMATE, STORE]) as process:
            shift = Shift(reader, process)
            shift.open_job()
            shift.look_at_every_page()
            shift.look_at_every_dialog()
            shift.read_loose_ends()
            shift.choose()
            shift.begin_and_be_killed(process)
        with running([REMATE, STORE]) as process:
            again = Shift(reader, process)
            again.open_job()
            again.read_loose_ends()
            again.choose()
            again.take_up_and_sign(row, name, pin)
            faults = sorted(set(shift.faults + again.faults))
            assert not faults, "\n".join(faults)
            assert os.listdir(BEGUN) == [], "what was signed is still kept as begun"
            again.quit()
            left = process.wait(reader.PATIENCE)
    assert left == 0, f"the program ended with {left}"
    check_the_store(row)


if __name__ == "__main__":
    main()
