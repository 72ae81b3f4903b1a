package fusetale.seeded.desk;

import fusetale.seeded.explore.Explorer;
import javafx.beans.property.StringProperty;

/** A model that knows none, and asks. */
record FreeModel(StringProperty text, Explorer explorer) {}
