package org.cagewall.kiosk.shell;

import java.awt.image.BufferedImage;
import java.nio.file.Path;
import java.util.List;

/** Takes pictures that are pasted or dropped on the window, to look for a cage card in them. Event thread. */
public interface PictureSink {

    void picture(BufferedImage picture);

    void files(List<Path> files);
}
