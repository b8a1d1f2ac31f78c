package org.cagewall.kiosk.shell;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.Image;
import java.awt.Toolkit;
import java.awt.datatransfer.DataFlavor;
import java.awt.datatransfer.StringSelection;
import java.awt.datatransfer.Transferable;
import java.awt.image.BufferedImage;
import java.awt.image.MemoryImageSource;
import java.io.File;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import javax.swing.JLabel;
import javax.swing.TransferHandler;
import org.junit.jupiter.api.Test;

class DroppedPicturesTest {

    private final List<Object> got = new ArrayList<>();
    private final DroppedPictures pictures = new DroppedPictures();

    @Test
    void aPastedPictureIsHandedOn() {
        pictures.add(sink());
        BufferedImage card = new BufferedImage(3, 2, BufferedImage.TYPE_INT_ARGB);
        assertThat(pictures.take(carrying(DataFlavor.imageFlavor, card))).isTrue();
        assertThat(got).singleElement().isSameAs(card);
    }

    @Test
    void aPictureOfAnotherKindIsHandedOnAsItCame() {
        pictures.add(sink());
        Image other = Toolkit.getDefaultToolkit()
                .createImage(new MemoryImageSource(3, 2, new int[] {1, 2, 3, 4, 5, 6}, 0, 3));
        assertThat(pictures.take(carrying(DataFlavor.imageFlavor, other))).isTrue();
        assertThat(got).singleElement().isSameAs(other);
    }

    @Test
    void droppedFilesAreHandedOn() {
        pictures.add(sink());
        Transferable files = carrying(DataFlavor.javaFileListFlavor, List.of(new File("a.png"), new File("b.jpg")));
        assertThat(pictures.importData(new TransferHandler.TransferSupport(new JLabel(), files)))
                .isTrue();
        assertThat(got).containsExactly(List.of(Path.of("a.png"), Path.of("b.jpg")));
    }

    @Test
    void textIsLeftToTheFieldThatHasTheKeyboard() {
        pictures.add(sink());
        assertThat(pictures.take(new StringSelection("HB 26-041"))).isFalse();
        assertThat(got).isEmpty();
    }

    @Test
    void withNobodyToTakeThemPicturesAreLeftAlone() {
        assertThat(pictures.take(carrying(DataFlavor.imageFlavor, new BufferedImage(1, 1, 1))))
                .isFalse();
    }

    private PictureSink sink() {
        return new PictureSink() {
            @Override
            public void picture(Image picture) {
                got.add(picture);
            }

            @Override
            public void files(List<Path> files) {
                got.add(files);
            }
        };
    }

    private static Transferable carrying(DataFlavor flavor, Object what) {
        return new Transferable() {
            @Override
            public DataFlavor[] getTransferDataFlavors() {
                return new DataFlavor[] {flavor};
            }

            @Override
            public boolean isDataFlavorSupported(DataFlavor asked) {
                return flavor.equals(asked);
            }

            @Override
            public Object getTransferData(DataFlavor asked) {
                return what;
            }
        };
    }
}
