package org.cagewall.command;

import org.cagewall.kiosk.shell.WindowMode;
import picocli.CommandLine.ITypeConverter;
import picocli.CommandLine.TypeConversionException;

/** Reads the size of a window as it is typed. Stateless; any thread. */
final class WindowSize implements ITypeConverter<WindowMode.Window> {

    @Override
    public WindowMode.Window convert(String text) {
        return WindowMode.Window.parse(text)
                .orElseThrow(() -> new TypeConversionException("write a size such as 1280x800, not '" + text + "'"));
    }
}
