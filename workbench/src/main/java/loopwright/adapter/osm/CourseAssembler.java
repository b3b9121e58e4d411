package loopwright.adapter.osm;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import loopwright.action.CourseImport;
import loopwright.action.ImportRecord;
import loopwright.action.UserFault;
import loopwright.course.Course;
import loopwright.course.Hole;
import loopwright.course.HoleSurvey;
import loopwright.geo.LocalFrame;

/** Builds a course from the elements of one candidate: lines, numbers, greens, tees, areas, trees, in this order. */
final class CourseAssembler {
    private static final int MOST_HOLES = 99;

    private final CourseCandidate candidate;
    private final MapData data;
    private final String label;
    private final List<ImportRecord> records;

    CourseAssembler(CourseCandidate candidate, MapData data, String label) {
        this.candidate = candidate;
        this.data = data;
        this.label = label;
        this.records = new ArrayList<>(data.records());
    }

    CourseImport assemble() {
        LocalFrame frame = new LocalFrame(candidate.centre());
        Site site = new Site(candidate, data.elements(), frame, records);
        List<HoleDraft> drafts = drafts(site);
        Map<HoleDraft, GreenFinder.Green> greens = GreenFinder.find(drafts, site, records);
        TeeFinder tees = new TeeFinder(site, drafts, records);
        Map<Integer, List<TeeSpot>> spots = tees.find();
        reportBoundary(site);
        Course course = new Course(
                candidate.name(),
                frame.origin(),
                site.boundary.map(SiteElement::getRegion),
                site.boundary.isPresent(),
                new AreaAssembly(site, greens.values(), tees.readAsTees(), records).areas(),
                TreeReading.read(site, records),
                drafts.stream().map(d -> hole(d, greens)).toList(),
                TeeSets.of(spots, records));
        records.sort(Comparator.comparing((ImportRecord r) -> !r.warning())
                .thenComparing(ImportRecord::kind)
                .thenComparing(ImportRecord::element));
        return new CourseImport(course, records);
    }

    private List<HoleDraft> drafts(Site site) {
        List<HoleDraft> read = HoleLines.read(site, records);
        if (read.isEmpty()) {
            throw new UserFault(label + ": " + candidate.name() + " has no usable golf=hole line; draw each hole as a"
                    + " line from its tee to its green, tagged golf=hole and ref=1, 2, ...");
        }
        if (read.size() > MOST_HOLES) {
            throw new UserFault(label + ": " + candidate.name() + " has " + read.size() + " golf=hole lines; a course"
                    + " has 99 at most: cut out one course.");
        }
        return HoleNumbers.number(read, records);
    }

    private void reportBoundary(Site site) {
        if (site.boundary.isEmpty()) {
            records.add(ShapeOddities.noBoundary(candidate));
        } else {
            records.add(ShapeOddities.boundaryGuessed(candidate));
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
