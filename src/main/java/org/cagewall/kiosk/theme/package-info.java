/**
 * How the kiosk looks: palettes, meanings, fonts and sizes, kept in properties files in two levels. A palette file
 * (LightTheme, DimTheme) holds colours; FlatLaf.properties says what each is for; Java asks by meaning only, through
 * {@link org.cagewall.kiosk.theme.Tone}, {@link org.cagewall.kiosk.theme.TextStyle} and
 * {@link org.cagewall.kiosk.theme.Sizes}, at the moment of painting.
 */
package org.cagewall.kiosk.theme;
