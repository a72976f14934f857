# SPDX-FileCopyrightText: The Remate authors
# SPDX-License-Identifier: Apache-2.0
"""What a screen reader does: looks for things by role and name, reads them, acts on them. Nothing but AT-SPI.

Roles, states and interfaces: AT-SPI 2.46 (libatspi), as the packages of Debian 12 document them.
"""

import time

import gi

gi.require_version("Atspi", "2.0")
from gi.repository import Atspi, GLib  # noqa: E402

PATIENCE = 60  # seconds; a sanitizer and a busy machine are slow, and waiting ends when there is what was waited for

# A role that says nothing about what one can do with the thing.
SAYS_NOTHING = {"invalid", "unknown", "redundant object", "extended"}
# Parts of a table, a list or whatever scrolls. Whether cells are told is looked at by rows, since one may well be empty.
PARTS = {"table cell", "list item", "table column header", "table row header", "scroll bar"}


def see_what_is_there_now():
    """Not what was there when it was last looked at: each answer comes from the program."""
    Atspi.get_desktop(0).set_cache_mask(Atspi.Cache.NONE)


def wait_for(what, ask):
    """Asks until there is an answer. What tools are told of a window that is just changing may be gone before it is read."""
    until = time.monotonic() + PATIENCE
    while time.monotonic() < until:
        pump()
        try:
            answer = ask()
        except GLib.Error:
            answer = None
        if answer:
            return answer
        time.sleep(0.05)
    raise AssertionError(f"waited {PATIENCE} s for {what() if callable(what) else what}")


def pump():
    """Takes what programs reported meanwhile."""
    while GLib.MainContext.default().iteration(False):
        pass


def name(node):
    return node.get_name() or ""


def role(node):
    return node.get_role_name()


def has(node, state):
    return node.get_state_set().contains(state)


def is_showing(node):
    return has(node, Atspi.StateType.SHOWING)


def words(node):
    return f'{role(node)} "{name(node)}"'


def children(node):
    """Those that are there: a table has as many as it has cells, so it is not asked for all of them."""
    for at in range(node.get_child_count()):
        child = node.get_child_at_index(at)
        if child is not None:
            yield child


def showing(node):
    """The thing and all that is shown in it, but not the cells of tables."""
    yield node
    if role(node) == "table":
        return
    for child in children(node):
        if is_showing(child):
            yield from showing(child)


def found(within, role_name, begins):
    """The first thing shown of that role whose name begins so, or None."""
    for node in showing(within):
        if role(node) == role_name and name(node).startswith(begins):
            return node
    return None


def within_menus(node, begins):
    """An item of a menu, whether the menu is open or not."""
    if role(node) == "menu item" and name(node).startswith(begins):
        return node
    return next((item for child in children(node) for item in [within_menus(child, begins)] if item), None)


def items_of_menus(node):
    """All items of a menu bar that lead on no further, whether their menus are open or not."""
    for child in children(node):
        inner = list(items_of_menus(child))
        if not inner and role(child) == "menu item":
            yield child
        yield from inner


def find(within, role_name, begins):
    return wait_for(f'{role_name} "{begins}" in {words(within)}', lambda: found(within, role_name, begins))


def program(process):
    """The program, once it has told that it is there."""

    see_what_is_there_now()

    def ask():
        assert process.poll() is None, f"the program ended with {process.returncode} before it was on the bus"
        for node in children(Atspi.get_desktop(0)):
            if node.get_process_id() == process.pid:
                return node
        return None

    return wait_for("the program on the accessibility bus", ask)


def actions(node):
    interface = node.get_action_iface()
    return [Atspi.Action.get_action_name(interface, at) for at in range(interface.get_n_actions())] if interface else []


def press(node, action="Press"):
    assert has(node, Atspi.StateType.ENABLED), f"{words(node)} is greyed: {node.get_description()}"
    assert node.get_action_iface().do_action(actions(node).index(action)), f"{words(node)} was not pressed"


def press_what_asks(node):
    """Presses what may open a box that has to be answered before the program answers the press itself."""
    try:
        press(node)
    except GLib.Error:
        pass  # the answer to the press comes once the box is gone


def type_into(node, text):
    assert has(node, Atspi.StateType.EDITABLE), f"{words(node)} cannot be edited"
    assert node.get_editable_text_iface().set_text_contents(text), f"{words(node)} took no text"


def text_of(node):
    interface = node.get_text_iface()
    return interface.get_text(0, interface.get_character_count())


def key(keysym):
    """A key, as the tool passes it on: to whatever has the keyboard."""
    assert Atspi.generate_keyboard_event(keysym, None, Atspi.KeySynthType.SYM), f"key {keysym:#x} was not passed on"


def rows(table):
    """All that a table says, row by row, and its titles first."""
    interface = table.get_table_iface()
    columns = range(interface.get_n_columns())
    yield [name(interface.get_column_header(column)) for column in columns]
    for row in range(interface.get_n_rows()):
        yield [name(interface.get_accessible_at(row, column)) for column in columns]


def is_worked_with(node):
    """Takes the keyboard, or does something when it is pressed."""
    can_act = [action for action in actions(node) if action != "SetFocus"]
    return bool(can_act) or has(node, Atspi.StateType.FOCUSABLE)


def label_of(node):
    """What it is called: its name, or that of the label beside it. The name of a box to choose from is what was chosen, so it needs another."""
    labels = [name(relation.get_target(0)) for relation in node.get_relation_set()
              if relation.get_relation_type() == Atspi.RelationType.LABELLED_BY]
    own = node.get_description() if role(node) == "combo box" else name(node)
    return own or next(iter(labels), "")


def untold(window):
    """What is shown and can be worked with, and does not say what it is or what it is for."""
    faults = []
    for node in showing(window):
        if role(node) in PARTS or not is_worked_with(node):
            continue
        if not label_of(node):
            faults.append(f"no name: {words(node)} in {words(node.get_parent())}")
        if role(node) in SAYS_NOTHING:
            faults.append(f"no role: {words(node)} in {words(node.get_parent())}")
        if role(node) == "table" and "" in next(rows(node)):
            faults.append(f"a column without a title: {words(node)}")
    return faults


def focused(window):
    """What has the keyboard, as the tree tells it: the innermost, but of a table the table."""
    inner = None
    if role(window) != "table":
        inner = next((deeper for child in children(window) if is_showing(child) for deeper in [focused(child)] if deeper), None)
    # What is around a control is told as focused as well, though it takes no key.
    takes_keys = has(window, Atspi.StateType.FOCUSED) and has(window, Atspi.StateType.FOCUSABLE)
    return inner or (window if takes_keys else None)


class FocusReports:
    """What programs report of the focus; a tool says aloud what it is told, and looks nowhere."""

    def __init__(self):
        self.names = []
        self._listener = Atspi.EventListener.new(self._take)
        self._listener.register("object:state-changed:focused")

    def _take(self, event):
        if not event.detail1 or not event.source:
            return
        try:
            self.names.append(words(event.source))
        except GLib.Error:
            pass  # it is gone with the window that it was in

    def forget(self):
        pump()
        self.names.clear()
