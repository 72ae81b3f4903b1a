package fusetale.mna;

/**
 * A junction for tests, written apart from the product's own: i = IS·(exp(v/nVt) − 1), the exponential continued by its
 * tangent above 80 nVt, with the usual logarithmic limiting of Newton's steps.
 */
record PlainJunction(double saturationAmps, double slopeVolts, double capacitance) implements PortLaw {
    /** Nearly ideal: 0.0138 V at 1 A, far below the volts of the tests that call a diode ideal. */
    static PlainJunction nearlyIdeal() {
        return new PlainJunction(1e-6, 1e-3, 1e-12);
    }

    @Override
    public int ports() {
        return 1;
    }

    @Override
    public double farads(int port) {
        return capacitance;
    }

    @Override
    public double baselineSiemens(int port) {
        return 1e-11;
    }

    @Override
    public void evaluate(PortPoint at) {
        double u = at.volts[0] / slopeVolts;
        double e = saturationAmps * Math.exp(Math.min(u, 80));
        at.amps[0] = e * (1 + Math.max(0, u - 80)) - saturationAmps;
        at.siemens[0] = e / slopeVolts;
    }

    @Override
    public double limited(int port, double proposed, double present) {
        double critical = slopeVolts * Math.log(slopeVolts / (Math.sqrt(2) * saturationAmps));
        if (proposed <= critical || Math.abs(proposed - present) <= 2 * slopeVolts) {
            return proposed;
        }
        if (present > 0) {
            double a = 1 + (proposed - present) / slopeVolts;
            return a > 0 ? present + slopeVolts * Math.log(a) : critical;
        }
        return slopeVolts * Math.log(proposed / slopeVolts);
    }
}
