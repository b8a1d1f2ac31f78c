/** Days away: planned, changed and ended, and what happened meanwhile read and ticked. Event thread. */
package org.cagewall.kiosk.handover;
