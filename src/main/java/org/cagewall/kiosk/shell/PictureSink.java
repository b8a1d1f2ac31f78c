package org.cagewall.kiosk.shell;

import java.awt.Image;
import java.nio.file.Path;
import java.util.List;

/** Takes pictures that are pasted or dropped on the window, to look for a cage card in them. Event thread. */
public interface PictureSink {

    /** As it came: it may be far too large to be copied. */
    void picture(Image picture);

    void files(List<Path> files);
}
