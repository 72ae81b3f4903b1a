package fusetale.seeded.desk;

import fusetale.seeded.explore.Explorer;
import javafx.scene.Node;

/** A view that solves on the window's thread. */
record ThinksItself(Node node, Explorer explorer) {}
