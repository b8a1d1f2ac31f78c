/** An alarm: what it is, what to do, and whom to phone. Event thread. */
package org.cagewall.kiosk.alarm;
