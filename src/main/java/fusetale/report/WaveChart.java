package fusetale.report;

import fusetale.explore.Trace;
import fusetale.signal.Waveform;
import java.awt.BasicStroke;
import org.jfree.chart.JFreeChart;
import org.jfree.chart.axis.AxisSpace;
import org.jfree.chart.plot.SeriesRenderingOrder;
import org.jfree.chart.plot.ValueMarker;
import org.jfree.chart.plot.XYPlot;
import org.jfree.chart.renderer.xy.XYLineAndShapeRenderer;
import org.jfree.chart.ui.Layer;
import org.jfree.chart.ui.RectangleInsets;
import org.jfree.data.xy.XYSeries;
import org.jfree.data.xy.XYSeriesCollection;

/** A waveform over two mains cycles, or once over a run: a broad marker line as supposed, thin ink as built drawn over it. */
final class WaveChart {
    /** Width [px] left of the data area for the figures. */
    static final double FIGURES_WIDTH = 62;

    /** Height [px] below the data area. */
    static final double TIME_HEIGHT = 22;

    private static final int CYCLES = 2;
    private static final double ROOM = 0.03;

    private WaveChart() {}

    /** The chart of one trace over {@value #CYCLES} cycles of {@code cycleSeconds}. */
    static JFreeChart of(Trace trace, double cycleSeconds) {
        XYSeriesCollection data = new XYSeriesCollection();
        data.addSeries(series("as supposed", trace.asSupposed(), cycleSeconds));
        data.addSeries(series("as built", trace.asBuilt(), cycleSeconds));
        return chart(trace, data, CYCLES * cycleSeconds);
    }

    /** The chart of one trace that does not repeat, from time 0 to its end. */
    static JFreeChart ofRun(Trace trace) {
        XYSeriesCollection data = new XYSeriesCollection();
        data.addSeries(once("as supposed", trace.asSupposed()));
        data.addSeries(once("as built", trace.asBuilt()));
        Waveform supposed = trace.asSupposed();
        return chart(trace, data, supposed.seconds(supposed.size() - 1));
    }

    private static JFreeChart chart(Trace trace, XYSeriesCollection data, double seconds) {
        double low = Math.min(trace.asBuilt().lowest(), trace.asSupposed().lowest());
        double high = Math.max(trace.asBuilt().highest(), trace.asSupposed().highest());
        double step = step(Math.max(high - low, 0.02 * Math.max(Math.abs(high), Math.abs(low))));
        // what reaches past a round figure by a hair does not deserve the next one
        double bottom = Math.floor(low / step + 0.06) * step;
        double top = Math.ceil(high / step - 0.06) * step;
        top = top > bottom ? top : bottom + step;
        XYPlot plot = new XYPlot(
                data,
                new EndsAxis(0, seconds, 0, WaveChart::time),
                new EndsAxis(bottom, top, ROOM, v -> figure(v, step, trace)),
                renderer());
        plot.setBackgroundPaint(null);
        plot.setOutlineVisible(false);
        plot.setDomainGridlinesVisible(false);
        plot.setRangeGridlinesVisible(false);
        plot.setInsets(RectangleInsets.ZERO_INSETS);
        plot.setAxisOffset(RectangleInsets.ZERO_INSETS);
        plot.setSeriesRenderingOrder(SeriesRenderingOrder.FORWARD);
        if (bottom < 0 && top > 0) {
            plot.addRangeMarker(new ValueMarker(0, Ink.FAINT_RULE, new BasicStroke(1f)), Layer.BACKGROUND);
        }
        AxisSpace below = new AxisSpace();
        below.setBottom(TIME_HEIGHT);
        plot.setFixedDomainAxisSpace(below);
        AxisSpace left = new AxisSpace();
        left.setLeft(FIGURES_WIDTH);
        plot.setFixedRangeAxisSpace(left);
        return StripChart.bare(plot);
    }

    private static XYLineAndShapeRenderer renderer() {
        XYLineAndShapeRenderer renderer = new XYLineAndShapeRenderer(true, false);
        renderer.setDrawSeriesLineAsPath(true);
        renderer.setSeriesPaint(0, Ink.MARKER_LINE);
        renderer.setSeriesStroke(0, new BasicStroke(3.6f, BasicStroke.CAP_ROUND, BasicStroke.JOIN_ROUND));
        renderer.setSeriesPaint(1, Ink.INK);
        renderer.setSeriesStroke(1, new BasicStroke(1.6f, BasicStroke.CAP_ROUND, BasicStroke.JOIN_ROUND));
        return renderer;
    }

    private static XYSeries once(String name, Waveform wave) {
        XYSeries series = new XYSeries(name, false, true);
        for (int k = 0; k < wave.size(); k++) {
            series.add(wave.seconds(k), wave.value(k));
        }
        return series;
    }

    private static XYSeries series(String name, Waveform wave, double cycleSeconds) {
        XYSeries series = new XYSeries(name, false, true);
        int last = wave.size() - 1;
        // A cycle ends where it begins: its last sample stands at the start as well.
        series.add(0, wave.value(last));
        for (int cycle = 0; cycle < CYCLES; cycle++) {
            for (int k = 0; k < wave.size(); k++) {
                double at = wave.seconds(k) - wave.seconds(0) + firstStep(wave, cycleSeconds);
                series.add(cycle * cycleSeconds + Math.min(at, cycleSeconds), wave.value(k));
            }
        }
        series.add(CYCLES * cycleSeconds, wave.value(last));
        return series;
    }

    /** Where in the cycle the first sample stands, the last one being its end. */
    private static double firstStep(Waveform wave, double cycleSeconds) {
        return cycleSeconds - (wave.seconds(wave.size() - 1) - wave.seconds(0));
    }

    /** A round step, 1, 2 or 5 times a power of ten, a fifth of a height or less. */
    private static double step(double height) {
        double fifth = Math.max(height, 1e-9) / 5;
        double power = Math.pow(10, Math.floor(Math.log10(fifth)));
        double lead = fifth / power;
        return power * (lead >= 5 ? 5 : lead >= 2 ? 2 : 1);
    }

    private static String time(double seconds) {
        return seconds == 0 ? "0" : Figures.plain(seconds * 1000) + " ms";
    }

    private static String figure(double value, double step, Trace trace) {
        double tidy = Math.rint(value / step) * step;
        return Figures.plain(tidy == 0 ? 0 : tidy) + " " + trace.unit().symbol();
    }
}
