package org.cagewall.kiosk.shell;

import java.awt.Image;
import java.awt.datatransfer.DataFlavor;
import java.awt.datatransfer.Transferable;
import java.awt.datatransfer.UnsupportedFlavorException;
import java.io.File;
import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import javax.swing.TransferHandler;

/** Takes pictures from the clipboard or from what is dropped on the window. Used on the event thread. */
final class DroppedPictures extends TransferHandler {

    private static final long serialVersionUID = 1L;

    private final transient List<PictureSink> sinks = new ArrayList<>();

    void add(PictureSink sink) {
        sinks.add(sink);
    }

    @Override
    public boolean canImport(TransferSupport support) {
        return !sinks.isEmpty()
                && (support.isDataFlavorSupported(DataFlavor.javaFileListFlavor)
                        || support.isDataFlavorSupported(DataFlavor.imageFlavor));
    }

    @Override
    public boolean importData(TransferSupport support) {
        return canImport(support) && take(support.getTransferable());
    }

    /** Hands on what is in it; says whether there was a picture or a file. */
    boolean take(Transferable carried) {
        if (sinks.isEmpty()) {
            return false;
        }
        try {
            if (carried.isDataFlavorSupported(DataFlavor.javaFileListFlavor)) {
                List<Path> files = new ArrayList<>();
                for (Object file : (List<?>) carried.getTransferData(DataFlavor.javaFileListFlavor)) {
                    files.add(((File) file).toPath());
                }
                sinks.forEach(sink -> sink.files(List.copyOf(files)));
                return true;
            }
            if (carried.isDataFlavorSupported(DataFlavor.imageFlavor)) {
                Image picture = (Image) carried.getTransferData(DataFlavor.imageFlavor);
                sinks.forEach(sink -> sink.picture(picture));
                return true;
            }
        } catch (UnsupportedFlavorException | IOException e) {
            return false;
        }
        return false;
    }
}
