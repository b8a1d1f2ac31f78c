package org.cagewall.store;

import java.time.LocalDate;
import org.cagewall.deed.Fact;

/** A live fact with the entry and the day it belongs to. */
record Row<F extends Fact>(long entry, LocalDate day, F fact) {}
