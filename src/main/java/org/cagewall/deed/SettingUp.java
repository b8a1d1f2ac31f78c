package org.cagewall.deed;

/** A deed that sets the birdroom up, which a sitter does not. */
interface SettingUp {}
