/** The day's list: what the sitter, or the owner, does next, and when to stop and phone. Event thread. */
package org.cagewall.kiosk.today;
