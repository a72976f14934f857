# SPDX-FileCopyrightText: The Remate authors
# SPDX-License-Identifier: Apache-2.0
"""A desk without a screen: a display, a session bus and the bus on which assistive tools speak to programs.

Needs neither a display, a login session nor systemd. Whatever it starts ends with it.
"""

import os
import subprocess
import sys
import tempfile
from contextlib import ExitStack, contextmanager

LAUNCHER = "/usr/libexec/at-spi-bus-launcher"


@contextmanager
def running(command, **how):
    """Runs a program as long as the block lasts."""
    process = subprocess.Popen(command, **how)
    try:
        yield process
    finally:
        if process.poll() is None:
            process.terminate()
        try:
            process.wait(20)
        except subprocess.TimeoutExpired:
            process.kill()
            process.wait()


@contextmanager
def display():
    """A display of its own; X chooses a number that is free, and says it once it is ready."""
    told, says = os.pipe()
    command = ["Xvfb", "-displayfd", str(says), "-screen", "0", "1600x1000x24", "-nolisten", "tcp", "-noreset"]
    with running(command, pass_fds=[says], stderr=subprocess.DEVNULL):
        os.close(says)
        number = os.fdopen(told).readline().strip()
        if not number:
            sys.exit("Xvfb gave no display: is the package xvfb installed?")
        yield ":" + number


@contextmanager
def session_bus():
    """A session bus of its own. Not dbus-run-session, which could not be ended together with what it started."""
    told, says = os.pipe()
    command = ["dbus-daemon", "--session", "--nofork", "--nosyslog", f"--print-address={says}"]
    with running(command, pass_fds=[says], stderr=subprocess.DEVNULL):
        os.close(says)
        address = os.fdopen(told).readline().strip()
        if not address:
            sys.exit("dbus-daemon gave no address: is the package dbus installed?")
        yield address


@contextmanager
def desk():
    """The environment in which a program and an assistive tool meet: that of this process while the block lasts."""
    before = dict(os.environ)
    with ExitStack() as stack:
        stack.callback(lambda: (os.environ.clear(), os.environ.update(before)))
        # A socket's path may have 107 bytes; that of a build folder may have more.
        runtime = stack.enter_context(tempfile.TemporaryDirectory(prefix="desk-", dir="/tmp"))
        os.environ["XDG_RUNTIME_DIR"] = runtime
        os.environ["DISPLAY"] = stack.enter_context(display())
        os.environ["DBUS_SESSION_BUS_ADDRESS"] = stack.enter_context(session_bus())
        os.environ.update(QT_QPA_PLATFORM="xcb", QT_ACCESSIBILITY="1", QT_LINUX_ACCESSIBILITY_ALWAYS_ON="1")
        os.environ.pop("NO_AT_BRIDGE", None)
        # Without one no window has the keyboard. This one gives it to whichever window came last, as people expect of a sheet.
        stack.enter_context(running(["matchbox-window-manager", "-use_titlebar", "no"], stderr=subprocess.DEVNULL))
        stack.enter_context(running([LAUNCHER, "--launch-immediately"], stderr=subprocess.DEVNULL))
        yield
