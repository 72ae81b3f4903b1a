package fusetale.desk.sheet;

import fusetale.store.Preferences;
import java.io.ByteArrayInputStream;
import java.util.List;
import javafx.print.JobSettings;
import javafx.print.PageLayout;
import javafx.print.PageOrientation;
import javafx.print.Paper;
import javafx.print.Printer;
import javafx.print.PrinterJob;
import javafx.scene.image.Image;
import javafx.scene.image.ImageView;
import javafx.stage.Window;
import org.jspecify.annotations.Nullable;

/**
 * The printers of the system, through its own dialog.
 *
 * @param owner the window over which the dialog comes
 * @param paper what is in the printer
 */
public record SystemPrinting(@Nullable Window owner, Preferences.Paper paper) implements Printing {
    /** 300 dots in an inch. */
    private static final double PRINT_SCALE = 3.125;

    @Override
    public Result print(List<SheetPage> pages, String title) {
        if (Printer.getAllPrinters().isEmpty()) {
            return Result.NO_PRINTER;
        }
        PrinterJob job = PrinterJob.createPrinterJob();
        if (job == null) {
            return Result.NO_PRINTER;
        }
        JobSettings settings = job.getJobSettings();
        settings.setJobName(title);
        Printer printer = job.getPrinter();
        Paper size = paper == Preferences.Paper.A4 ? Paper.A4 : Paper.NA_LETTER;
        settings.setPageLayout(
                printer.createPageLayout(size, PageOrientation.LANDSCAPE, Printer.MarginType.HARDWARE_MINIMUM));
        if (!job.showPrintDialog(owner)) {
            job.cancelJob();
            return Result.GIVEN_UP;
        }
        for (SheetPage page : pages) {
            if (!job.printPage(settings.getPageLayout(), fitted(page, settings.getPageLayout()))) {
                job.cancelJob();
                return Result.REFUSED;
            }
        }
        return job.endJob() ? Result.SENT : Result.REFUSED;
    }

    private static ImageView fitted(SheetPage page, PageLayout layout) {
        ImageView image =
                new ImageView(new Image(new ByteArrayInputStream(page.png().apply(PRINT_SCALE))));
        image.setPreserveRatio(true);
        image.setSmooth(true);
        image.setFitWidth(layout.getPrintableWidth());
        image.setFitHeight(layout.getPrintableHeight());
        return image;
    }
}
