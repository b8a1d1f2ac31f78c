package org.cagewall.room;

import java.util.Optional;

/** Someone who records: the owner, another keeper, or the sitter. Immutable; any thread. */
public record Person(long id, String name, Role role, Optional<String> phone) {}
