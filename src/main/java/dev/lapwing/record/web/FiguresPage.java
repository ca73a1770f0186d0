package dev.lapwing.record.web;

import dev.lapwing.record.Figures;
import dev.lapwing.record.domain.Waits;
import dev.lapwing.record.domain.WilsonInterval;
import dev.lapwing.web.Pages;
import dev.lapwing.web.Roles;
import dev.lapwing.web.Shell;
import io.quarkus.qute.CheckedTemplate;
import io.quarkus.qute.TemplateInstance;
import jakarta.annotation.security.RolesAllowed;
import jakarta.inject.Inject;
import jakarta.transaction.Transactional;
import jakarta.ws.rs.GET;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.Produces;
import jakarta.ws.rs.core.Response;
import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.util.List;
import java.util.Locale;

/** How the care of the roofs goes: few figures, each with its definition, its table and a file of it. */
@Path("/figures")
@RolesAllowed(Roles.COORDINATOR)
class FiguresPage {
    /** On-time work of a month; the share and its bounds in percent, the bar from 0 to 100. */
    record OnTimeRow(String month, long done, long onTime, String share, String between, long bar) {}

    @CheckedTemplate(basePath = "record")
    static class Templates {
        static native TemplateInstance figures(
                List<OnTimeRow> onTime, List<Figures.Month> months, long waits, String median, String ninth);
    }

    @Inject
    Figures figures;

    @Inject
    Shell shell;

    @Inject
    Pages pages;

    @Inject
    Clock clock;

    @GET
    @Transactional
    public Response show() {
        Instant now = clock.instant();
        String depot = shell.depot();
        Waits waits = figures.waits(depot, now);
        return pages.show(Templates.figures(
                figures.onTime(depot, now).stream().map(FiguresPage::row).toList(),
                figures.byMonth(depot, now),
                waits.count(),
                hours(waits.quantile(0.5)),
                hours(waits.quantile(0.9))));
    }

    /** Answers the monthly figures as a file. */
    @GET
    @Path("monthly.csv")
    @Produces("text/csv;charset=UTF-8")
    @Transactional
    public Response monthly() {
        Instant now = clock.instant();
        var onTime = figures.onTime(shell.depot(), now);
        var months = figures.byMonth(shell.depot(), now);
        var csv = new StringBuilder("month,done,onTime,openHolds,strikes\r\n");
        for (int i = 0; i < onTime.size(); i++) {
            csv.append(onTime.get(i).month()).append(',');
            csv.append(onTime.get(i).done())
                    .append(',')
                    .append(onTime.get(i).onTime())
                    .append(',');
            csv.append(months.get(i).openHolds())
                    .append(',')
                    .append(months.get(i).strikes())
                    .append("\r\n");
        }
        return Response.ok(csv.toString())
                .header("Content-Disposition", "attachment; filename=\"lapwing-monthly.csv\"")
                .build();
    }

    private static OnTimeRow row(Figures.OnTime month) {
        if (month.done() == 0) {
            return new OnTimeRow(month.month().toString(), 0, 0, "none done", "", 0);
        }
        double share = (double) month.onTime() / month.done();
        var interval = WilsonInterval.of(month.onTime(), month.done());
        return new OnTimeRow(
                month.month().toString(),
                month.done(),
                month.onTime(),
                percent(share),
                percent(interval.lower()) + " to " + percent(interval.upper()),
                Math.round(share * 100));
    }

    private static String percent(double share) {
        return String.format(Locale.ROOT, "%.0f %%", share * 100);
    }

    private static String hours(Duration wait) {
        return wait == null ? "no case yet" : String.format(Locale.ROOT, "%.1f h", wait.toMinutes() / 60.0);
    }
}
