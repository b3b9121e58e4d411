package loopwright.adapter.osm;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import loopwright.action.CourseImport;
import loopwright.action.ImportRecord;
import loopwright.action.UserFault;
import loopwright.course.Area;
import loopwright.course.Course;
import loopwright.course.Hole;
import loopwright.course.HoleSurvey;

/** Builds a course from the elements of one candidate: lines, numbers, greens, tees, areas, trees, in this order. */
final class CourseAssembler {
    private static final int MOST_HOLES = 99;

    private final CourseLoop loop;
    private final String label;
    private final List<ImportRecord> records;

    CourseAssembler(CourseLoop loop, String label) {
        this.loop = loop;
        this.label = label;
        this.records = new ArrayList<>(loop.records());
    }

    CourseImport assemble() {
        Site site = loop.site();
        List<HoleDraft> drafts = drafts();
        Map<HoleDraft, GreenFinder.Green> greens = GreenFinder.find(drafts, site, records);
        TeeFinder tees = new TeeFinder(site, drafts, loop.others(), records);
        Map<Integer, List<TeeSpot>> spots = tees.find();
        Set<String> greensOfOthers = loop.others().stream()
                .flatMap(h -> GreenFinder.findMapped(h, site).stream())
                .map(SiteElement::id)
                .collect(Collectors.toSet());
        Optional<SiteElement> border = OutOfBoundsReading.findBorder(site, drafts);
        if (border.isEmpty()) {
            reportBoundary(site);
        }
        List<Area> areas = new ArrayList<>(
                new AreaAssembly(site, greens.values(), greensOfOthers, tees.readAsTees(), records).areas());
        border.ifPresent(b -> areas.removeIf(a -> a.id().equals(b.id())));
        areas.addAll(OutOfBoundsReading.bands(site, drafts, records));
        areas.sort(Comparator.comparing(Area::kind).thenComparing(Area::id));
        Course course = new Course(
                loop.name(),
                site.frame.origin(),
                border.or(() -> site.boundary).map(SiteElement::getRegion),
                border.isEmpty() && site.boundary.isPresent(),
                areas,
                TreeReading.read(site, records),
                drafts.stream().map(d -> hole(d, greens)).toList(),
                TeeSets.of(spots, records));
        records.sort(Comparator.comparing((ImportRecord r) -> !r.warning())
                .thenComparing(ImportRecord::kind)
                .thenComparing(ImportRecord::element));
        return new CourseImport(course, records);
    }

    private List<HoleDraft> drafts() {
        if (loop.holes().isEmpty()) {
            throw new UserFault(label + ": " + loop.name() + " has no usable golf=hole line and no tees and greens that"
                    + " could be paired; draw each hole as a line from its tee to its green, tagged golf=hole and"
                    + " ref=1, 2, ...");
        }
        if (loop.holes().size() > MOST_HOLES) {
            throw new UserFault(label + ": " + loop.name() + " has "
                    + loop.holes().size() + " golf=hole lines; a" + " course has 99 at most: cut out one course.");
        }
        return HoleNumbers.number(loop.holes(), records);
    }

    private void reportBoundary(Site site) {
        if (site.boundary.isEmpty()) {
            records.add(ShapeOddities.noBoundary(loop.candidate()));
        } else {
            records.add(ShapeOddities.boundaryGuessed(loop.candidate()));
        }
    }

    private Hole hole(HoleDraft draft, Map<HoleDraft, GreenFinder.Green> greens) {
        GreenFinder.Green green = Optional.ofNullable(greens.get(draft)).orElseThrow();
        ParReading par = ParReading.of(draft, records);
        return new Hole(
                draft.getNumber(),
                par.par(),
                par.source(),
                ParReading.strokeIndex(draft, records),
                draft.line(),
                green.region(),
                green.assumed(),
                green.holeLocation(),
                HoleSurvey.NOTHING);
    }
}
