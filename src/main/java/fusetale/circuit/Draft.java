package fusetale.circuit;

import fusetale.circuit.MachineForms.Include;
import fusetale.circuit.MachineForms.PointDraft;
import java.util.ArrayList;
import java.util.List;
import java.util.function.UnaryOperator;

/**
 * What one file, or a file with its blocks, says; names are not looked up yet.
 *
 * @param includes shared blocks it asks for
 * @param parts parts
 * @param points test points
 * @param connectors connectors
 * @param settings arrangements
 * @param drawing where parts, contacts and test points stand
 * @param sections parts of the drawing with a heading
 * @param stages stages of a staged start-up
 */
record Draft(
        List<Include> includes,
        List<Declared<Part>> parts,
        List<Declared<PointDraft>> points,
        List<Declared<Connector>> connectors,
        List<Declared<SettingDraft>> settings,
        List<Declared<Stand>> drawing,
        List<Declared<SectionArea>> sections,
        List<Declared<StageDraft>> stages) {
    static Draft of(Values v) {
        return new Draft(
                MachineForms.orEmpty(v.find(MachineForms.INCLUDES)),
                MachineForms.orEmpty(v.find(MachineForms.PARTS)),
                MachineForms.orEmpty(v.find(MachineForms.POINTS)),
                MachineForms.orEmpty(v.find(MachineForms.CONNECTORS)),
                MachineForms.orEmpty(v.find(MachineForms.SETTINGS)),
                MachineForms.orEmpty(v.find(DrawingForms.DRAWING)),
                MachineForms.orEmpty(v.find(DrawingForms.SECTIONS)),
                MachineForms.orEmpty(v.find(MachineForms.STAGES)));
    }

    /** This and the contents of a block, its drawing moved. */
    Draft plus(Draft block, Square at) {
        return new Draft(
                includes,
                joined(parts, block.parts),
                joined(points, block.points),
                joined(connectors, block.connectors),
                settings,
                joined(drawing, changed(block.drawing, stand -> stand.moved(at))),
                joined(sections, changed(block.sections, section -> section.moved(at))),
                stages);
    }

    private static <T> List<Declared<T>> changed(List<Declared<T>> all, UnaryOperator<T> change) {
        List<Declared<T>> changed = new ArrayList<>();
        for (Declared<T> each : all) {
            T value = each.value();
            changed.add(value == null ? each : new Declared<>(each.name(), each.place(), change.apply(value)));
        }
        return changed;
    }

    private static <T> List<T> joined(List<T> one, List<T> two) {
        List<T> all = new ArrayList<>(one);
        all.addAll(two);
        return List.copyOf(all);
    }

    /** Whether every part, test point, connector and arrangement could be read. */
    boolean complete() {
        return NamedForm.values(parts) != null
                && NamedForm.values(points) != null
                && NamedForm.values(connectors) != null
                && NamedForm.values(settings) != null
                && NamedForm.values(stages) != null;
    }
}
