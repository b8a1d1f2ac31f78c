/** The screen of the days ahead: until when they may lay, what will not be done, and what the nests will hold. */
package org.cagewall.kiosk.ahead;
