package org.cagewall.kiosk.setup;

/** What is wrong with what was filled in, and with which part of it. Immutable; any thread. */
record Problem(String part, String words) {}
