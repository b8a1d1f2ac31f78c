package org.cagewall.benchmark;

import com.formdev.flatlaf.FlatLightLaf;
import java.sql.Connection;
import java.sql.DriverManager;
import java.sql.SQLException;
import javax.swing.JFrame;
import javax.swing.JLabel;
import javax.swing.RepaintManager;
import javax.swing.SwingUtilities;

/** The least that any such program must do: open the database, put on the look, show a window. */
final class StartBare {

    private StartBare() {}

    public static void main(String[] args) throws SQLException {
        RepaintManager.setCurrentManager(new FirstPaint(part -> part instanceof JLabel && part.isShowing()));
        try (Connection connection = DriverManager.getConnection("jdbc:derby:" + args[0])) {
            connection.createStatement().executeQuery("VALUES 1").next();
        }
        SwingUtilities.invokeLater(() -> {
            FlatLightLaf.setup();
            JFrame frame = new JFrame("bare");
            frame.add(new JLabel("A1"));
            frame.setSize(1280, 800);
            frame.setVisible(true);
        });
    }
}
