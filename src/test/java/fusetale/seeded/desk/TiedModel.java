package fusetale.seeded.desk;

import javafx.scene.Node;

/** A model that knows a scene. */
record TiedModel(Node node) {}
