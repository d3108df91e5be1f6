package crumbclock.report.html;

import static org.assertj.core.api.Assertions.assertThat;

import crumbclock.domain.plan.Plan;
import crumbclock.formats.csv.FridgeCsv;
import crumbclock.formats.csv.TimetableCsv;
import crumbclock.report.ReportFixture;
import crumbclock.report.ReportPlans;
import crumbclock.report.Xml;
import crumbclock.report.text.PlanSummary;
import java.util.Locale;
import java.util.Set;
import java.util.TimeZone;
import java.util.TreeSet;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.w3c.dom.Element;

class PlanPageTest {

    private static final String[] SECTIONS = {"orders", "timetable", "run-0", "run-1", "ovens", "shelves", "cost",
        "cautions"};

    private final String page = PlanPage.render(ReportFixture.problem(), ReportPlans.sound());

    private static Element section(String page, String id) {
        return Xml.all(Xml.parse(page).getDocumentElement(), "section").stream()
                .filter(one -> one.getAttribute("id").equals(id)).findFirst().orElseThrow();
    }

    @Test
    void is_well_formed_and_has_every_section() {
        assertThat(page).startsWith("<!DOCTYPE html>");
        for (String id : SECTIONS) {
            assertThat(section(page, id).getTextContent()).as(id).isNotBlank();
        }
    }

    @Test
    void escapes_texts_in_templates_and_drawings() {
        assertThat(page).contains("&lt;b&gt;&quot;Juno &amp; Pip&quot;&lt;/b&gt; are &#39;six&#39;")
                .doesNotContain("<b>\"Juno").contains("milk &amp; eggs").doesNotContain("milk & eggs");

        String bad = PlanPage.render(ReportFixture.problem(), ReportPlans.unsound());
        assertThat(bad).contains("board &lt;305&gt; mm").doesNotContain("<305>");
    }

    @Test
    void needs_nothing_from_outside() {
        assertThat(page).doesNotContain("http:").doesNotContain("https:").doesNotContain("//")
                .doesNotContain("src=").doesNotContain("<script").doesNotContain("<link").doesNotContain("@import");
        assertThat(Pattern.compile("href=\"(?!#)").matcher(page).find()).isFalse();
        assertThat(Pattern.compile("url\\((?!#)").matcher(page).find()).isFalse();
    }

    @Test
    void every_link_and_pattern_leads_somewhere() {
        var root = Xml.parse(PlanPage.render(ReportFixture.problem(), ReportPlans.unsound())).getDocumentElement();
        Set<String> ids = new TreeSet<>();
        for (String tag : new String[] {"section", "div", "header", "pattern"}) {
            Xml.all(root, tag).stream().map(one -> one.getAttribute("id")).filter(id -> !id.isEmpty())
                    .forEach(id -> assertThat(ids.add(id)).as("id %s once", id).isTrue());
        }
        Xml.all(root, "a").forEach(link -> assertThat(ids).contains(link.getAttribute("href").substring(1)));
        var used = Pattern.compile("url\\(#([^)]*)\\)").matcher(page);
        while (used.find()) {
            assertThat(ids).contains(used.group(1));
        }
    }

    @Test
    void puts_every_step_into_exactly_the_run_sheets_of_its_workers() {
        Plan plan = ReportPlans.sound();
        for (int i = 0; i < 2; i++) {
            var sheet = section(page, "run-" + i);
            String person = sheet.getAttribute("data-person");
            Set<String> expected = new TreeSet<>();
            plan.timetable().steps().stream()
                    .filter(step -> step.work().stream().anyMatch(work -> work.personId().equals(person)))
                    .forEach(step -> expected.add(step.stepId()));
            plan.timetable().touches().stream().filter(touch -> touch.personId().equals(person))
                    .forEach(touch -> expected.add(touch.stepId()));
            Set<String> shown = Xml.all(sheet, "tr").stream().map(row -> row.getAttribute("data-step"))
                    .filter(id -> !id.isEmpty()).collect(Collectors.toCollection(TreeSet::new));
            assertThat(shown).as(person).isEqualTo(expected).isNotEmpty();
        }
    }

    @Test
    void says_when_to_take_out_where_to_put_and_who_helps() {
        String odette = section(page, "run-0").getTextContent();
        assertThat(odette).contains("take out between 20:01 and 20:21").contains("Fridge: F2, left")
                .contains("timer 20 min, to 20:01; planned out 20:07").contains("with Pell")
                .contains("next: cover with paste 09:10 (Odette), out at least 30 min before")
                .contains("turn on Oven to 175 °C").contains("put it down, go on at 10:05");
        assertThat(section(page, "run-1").getTextContent()).contains("Fridge: F2, right back")
                .contains("full clean: Mixer bowl 2");
    }

    @Test
    void tells_late_and_not_possible_orders_with_their_reasons() {
        String orders = section(page, "orders").getTextContent();
        assertThat(orders).contains("late by 25 min").contains("R03 hands: Odette has a break")
                .contains("not possible").contains("R01 order of work: peonies dry twice");
    }

    @Test
    void tells_what_no_plan_can_beat_unless_the_plan_does_not_hold() {
        assertThat(page).contains("No plan with these orders can be less than 12 min late in all; this one is 25 min.",
                "No plan with these orders can end before Sat 13:17; this one ends 13:30.",
                "Cannot be ready before Sat 11:22, whatever else waits: at least 12 min late.",
                "Cannot be made by any plan, whatever else waits.");
        assertThat(PlanPage.render(ReportFixture.problem(), ReportPlans.unsound())).doesNotContain("No plan")
                .doesNotContain("whatever else waits");
    }

    @Test
    void a_sound_plan_says_so_and_has_no_alarm() {
        assertThat(page).contains("Sound.").doesNotContain("This plan does not hold");
    }

    @Test
    void a_plan_with_findings_says_so_at_the_top_and_in_every_section() {
        String bad = PlanPage.render(ReportFixture.problem(), ReportPlans.unsound());

        for (String id : SECTIONS) {
            assertThat(section(bad, id).getTextContent()).as(id).contains("This plan does not hold");
        }
        var top = Xml.all(Xml.parse(bad).getDocumentElement(), "header").get(0).getTextContent();
        assertThat(top).contains("2 broken rules").contains("R10 shelf fit").contains("R04 touches")
                .doesNotContain("Sound.");
    }

    @Test
    void shows_each_limit_in_both_scales() {
        assertThat(section(page, "cautions").getTextContent()).contains("5 °C (41 °F)").contains("8 °C")
                .contains("57 to 21 °C (135 to 70 °F)").contains("240 min out of the cold");
    }

    @Test
    void shows_even_a_plan_without_anything_in_it() {
        String empty = PlanPage.render(ReportFixture.problem(), ReportPlans.of(ReportPlans.emptyTimetable()));

        assertThat(section(empty, "timetable").getTextContent())
                .contains("Friday 12 June 2026: nobody works and no oven is on.");
        assertThat(section(empty, "orders").getTextContent()).contains("not possible");
    }

    @Test
    void shows_even_a_plan_that_names_what_does_not_exist() {
        var plan = ReportPlans.of(ReportPlans.strangeTimetable());

        String strange = PlanPage.render(ReportFixture.problem(), plan);

        assertThat(section(strange, "run-0").getTextContent()).contains("no-such-step").contains("no-such-pool 4");
        assertThat(PlanSummary.render(ReportFixture.problem(), plan)).contains("Fullest shelf");
        assertThat(TimetableCsv.write(ReportFixture.problem(), plan)).contains("no-such-step");
        assertThat(FridgeCsv.write(ReportFixture.problem(), plan)).contains("no-such-step");
    }

    @Test
    void is_the_same_on_every_machine() {
        var locale = Locale.getDefault();
        var zone = TimeZone.getDefault();
        try {
            Locale.setDefault(Locale.forLanguageTag("ar-EG-u-nu-arab"));
            TimeZone.setDefault(TimeZone.getTimeZone("Pacific/Auckland"));
            assertThat(PlanPage.render(ReportFixture.problem(), ReportPlans.sound())).isEqualTo(page);
        } finally {
            Locale.setDefault(locale);
            TimeZone.setDefault(zone);
        }
    }
}
