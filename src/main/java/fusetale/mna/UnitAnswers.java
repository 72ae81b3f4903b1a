package fusetale.mna;

/**
 * How all unknowns of a network answer a unit of each input of its {@link Reduction}: solved for, or those of another
 * network corrected for what was laid across two of its nodes. The latter are worked out where they are asked for, since
 * most waveforms need two unknowns of three hundred. Immutable.
 */
abstract sealed class UnitAnswers {
    abstract int inputs();

    /** What one unknown answers to one input. */
    abstract double at(int input, int unknown);

    /** All unknowns for given inputs. {@code input}: not modified. */
    abstract double[] unknowns(double[] input);

    /**
     * Voltage [V] of a node against another for a unit of one input. Of a board that hangs on little, both nodes are lifted by
     * megavolts an ampere: what is taken off them is taken off their difference, not off each, or rounding is left of it.
     */
    abstract double across(int input, int one, int two);

    /** From one column of {@code unknowns} an input. {@code columns}: kept, and never modified again. */
    static UnitAnswers of(double[][] columns, int unknowns) {
        return new Columns(columns, unknowns);
    }

    /**
     * Corrected: each column less a part of one direction (Sherman and Morrison's rank-one update).
     *
     * @param over what is corrected
     * @param direction what one ampere into the first of the two nodes and out of the second did there. Kept.
     * @param parts by input, how much of the direction is taken off. Kept.
     * @param own input of a source along the direction that {@code over} does not have, −1 for none
     */
    static UnitAnswers corrected(UnitAnswers over, double[] direction, double[] parts, int own) {
        return new Corrected(over, direction, parts, own);
    }

    private static final class Columns extends UnitAnswers {
        private final double[][] columns;
        private final int unknowns;

        Columns(double[][] columns, int unknowns) {
            this.columns = columns;
            this.unknowns = unknowns;
        }

        @Override
        int inputs() {
            return columns.length;
        }

        @Override
        double at(int input, int unknown) {
            return columns[input][unknown];
        }

        @Override
        double across(int input, int one, int two) {
            return Layout.across(columns[input], one, two);
        }

        @Override
        double[] unknowns(double[] input) {
            double[] z = new double[unknowns];
            Reduction.addAll(z, columns, input, 0, columns.length, unknowns);
            return z;
        }
    }

    private static final class Corrected extends UnitAnswers {
        private final UnitAnswers over;
        private final double[] direction;
        private final double[] parts;
        private final int own;

        Corrected(UnitAnswers over, double[] direction, double[] parts, int own) {
            this.over = over;
            this.direction = direction;
            this.parts = parts;
            this.own = own;
        }

        @Override
        int inputs() {
            return parts.length;
        }

        @Override
        double at(int input, int unknown) {
            double before = input == own ? direction[unknown] : over.at(there(input), unknown);
            return before - parts[input] * direction[unknown];
        }

        @Override
        double across(int input, int one, int two) {
            double along = Layout.across(direction, one, two);
            double before = input == own ? along : over.across(there(input), one, two);
            return before - parts[input] * along;
        }

        private int there(int input) {
            return own >= 0 && input > own ? input - 1 : input;
        }

        @Override
        double[] unknowns(double[] input) {
            double[] before = new double[over.inputs()];
            double along = 0;
            for (int j = 0; j < parts.length; j++) {
                if (j == own) {
                    along += input[j];
                } else {
                    before[there(j)] = input[j];
                }
                along -= parts[j] * input[j];
            }
            double[] z = over.unknowns(before);
            Reduction.axpy(z, direction, along, z.length);
            return z;
        }
    }
}
