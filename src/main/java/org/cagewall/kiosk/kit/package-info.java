/**
 * The parts that every screen is made of, fit for a wet finger and for eyes at a metre and a half. They hold no
 * sentences of the trade: a screen hands them words that are already said. Faces ({@link org.cagewall.kiosk.kit.wall.TileFace},
 * {@link org.cagewall.kiosk.kit.list.RowFace}) and {@link org.cagewall.kiosk.kit.ButtonKind} are free of Swing, so a state
 * record may hold them. All parts are used on the event thread.
 */
package org.cagewall.kiosk.kit;
