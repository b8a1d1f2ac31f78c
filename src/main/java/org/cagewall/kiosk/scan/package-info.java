/** The live view of a camera that reads cards, large and small. */
package org.cagewall.kiosk.scan;
