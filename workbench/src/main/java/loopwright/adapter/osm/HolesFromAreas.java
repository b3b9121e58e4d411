package loopwright.adapter.osm;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalInt;
import java.util.Set;
import loopwright.action.ImportRecord;
import loopwright.course.AreaKind;
import loopwright.geo.Line;
import loopwright.geo.Place;
import loopwright.geo.Region;

/**
 * Makes holes from greens, tees and fairways where no lines are drawn. A tee is paired with the green to which the
 * straight way lies longest on short grass; numbers on the areas limit the choice, and a green that its number leaves
 * without a tee may take one from a neighbour whose way there is poorer. Every hole made so is a proposal.
 */
final class HolesFromAreas {
    private static final double SHORTEST_METRES = 60;
    private static final double LONGEST_METRES = 620;
    private static final double STEP_METRES = 5;
    /** A tee keeps to the green of its number unless another saves it this much bare ground. */
    private static final double NUMBER_METRES = 50;
    /** A hole bends where that puts so much more of it on its fairway, this far off the straight line. */
    private static final double BEND_METRES = 20;
    /** Bends are tried on a grid of this step. */
    private static final double BEND_GRID_METRES = 15;
    /** A way that plays over a fairway lies on it for this long or longer. */
    private static final double ON_FAIRWAY_METRES = 40;
    /** Tees of one hole stand this close together. */
    private static final double ONE_HOLE_METRES = 120;

    private final Site site;
    private final List<ImportRecord> records;
    private final List<SiteElement> fairways;
    private final Map<String, Way> ways = new HashMap<>();
    private final Map<String, List<Region>> fairwaysByGreen = new HashMap<>();

    private HolesFromAreas(Site site, List<ImportRecord> records) {
        this.site = site;
        this.records = records;
        this.fairways = site.of(AreaKind.FAIRWAY);
    }

    private record Pair(SiteElement tee, SiteElement green, double cost) {}

    /** Holes for greens that no line ends on: those with a number, or, if there are no lines at all, every green. */
    static List<HoleDraft> make(Site site, List<HoleDraft> lines, List<ImportRecord> records) {
        HolesFromAreas maker = new HolesFromAreas(site, records);
        List<SiteElement> greens = site.of(AreaKind.GREEN).stream()
                .filter(g -> g.region().isPresent() && !inPractice(g, site))
                .filter(g -> lines.stream().noneMatch(l -> g.distanceTo(l.line().end()) <= ONE_HOLE_METRES / 4))
                .toList();
        boolean numbered = greens.stream().anyMatch(g -> number(g).isPresent());
        if (!numbered && !lines.isEmpty()) {
            return List.of();
        }
        Set<Integer> drawn = new HashSet<>();
        lines.forEach(l -> l.number().ifPresent(drawn::add));
        List<SiteElement> open = greens.stream()
                .filter(g -> number(g).isPresent() == numbered)
                .filter(g -> number(g).isEmpty() || !drawn.contains(number(g).getAsInt()))
                .toList();
        return maker.holes(open);
    }

    private static boolean inPractice(SiteElement e, Site site) {
        Place at = middle(e);
        return site.of(AreaKind.PRACTICE).stream()
                .anyMatch(p -> p.region().isPresent() && p.getRegion().contains(at));
    }

    /** From ref, else from a name such as "#7" or "T7". */
    static OptionalInt number(SiteElement e) {
        OptionalInt ref = OsmNumbers.holeNumber(e.map().get("ref"));
        OptionalInt found =
                ref.isPresent() ? ref : OsmNumbers.holeNumber(e.map().get("name"));
        return found.isPresent() && found.getAsInt() >= 1 ? found : OptionalInt.empty();
    }

    private static Place middle(SiteElement e) {
        return e.region().map(Region::insidePlace).orElse(e.anchor());
    }

    private List<HoleDraft> holes(List<SiteElement> greens) {
        Map<SiteElement, SiteElement> greenOfTee = pairByNumber(greens);
        rescueGreensWithoutTee(greens, greenOfTee);
        List<HoleDraft> out = new ArrayList<>();
        for (SiteElement green : greens) {
            List<SiteElement> own = teesOf(green, greenOfTee);
            if (own.isEmpty()) {
                records.add(PairOddities.greenWithoutTee(green, number(green)));
            } else {
                out.add(hole(green, own));
            }
        }
        return out;
    }

    private Map<SiteElement, SiteElement> pairByNumber(List<SiteElement> greens) {
        Map<SiteElement, SiteElement> out = new LinkedHashMap<>();
        Map<Integer, List<SiteElement>> byNumber = new LinkedHashMap<>();
        greens.forEach(g -> byNumber.computeIfAbsent(number(g).orElse(0), n -> new ArrayList<>())
                .add(g));
        byNumber.forEach((n, group) -> {
            List<SiteElement> tees = site.of(AreaKind.TEE).stream()
                    .filter(t -> !inPractice(t, site))
                    .filter(t -> number(t).orElse(0) == n)
                    .toList();
            out.putAll(pair(tees, group));
        });
        return out;
    }

    /** Best pairs first until every green has a tee; then every tee left goes to its best green. */
    private Map<SiteElement, SiteElement> pair(List<SiteElement> tees, List<SiteElement> greens) {
        List<Pair> pairs = new ArrayList<>();
        for (SiteElement tee : tees) {
            for (SiteElement green : greens) {
                double cost = cost(tee, green);
                if (Double.isFinite(cost)) {
                    pairs.add(new Pair(tee, green, cost));
                }
            }
        }
        pairs.sort(Comparator.comparingDouble(Pair::cost));
        Map<SiteElement, SiteElement> out = new LinkedHashMap<>();
        for (Pair p : pairs) {
            if (!out.containsKey(p.tee()) && !out.containsValue(p.green())) {
                out.put(p.tee(), p.green());
            }
        }
        for (Pair p : pairs) {
            boolean near = out.entrySet().stream()
                    .anyMatch(e -> e.getValue().equals(p.green())
                            && middle(e.getKey()).distanceTo(middle(p.tee())) <= ONE_HOLE_METRES);
            if (near || number(p.tee()).isPresent()) {
                out.putIfAbsent(p.tee(), p.green());
            }
        }
        return out;
    }

    /** Gives a numbered green without a tee those tees of one neighbour that fit it better, if the neighbour keeps one. */
    private void rescueGreensWithoutTee(List<SiteElement> greens, Map<SiteElement, SiteElement> greenOfTee) {
        for (SiteElement green : greens) {
            if (greenOfTee.containsValue(green) || number(green).isEmpty()) {
                continue;
            }
            List<SiteElement> best = List.of();
            double bestSaved = 0;
            for (SiteElement donor : greens) {
                List<SiteElement> own = teesOf(donor, greenOfTee);
                List<SiteElement> better = own.stream()
                        .filter(t -> !missesItsFairway(t, green))
                        .filter(t -> cost(t, donor) - cost(t, green) > NUMBER_METRES)
                        .toList();
                double saved = better.stream()
                        .mapToDouble(t -> cost(t, donor) - cost(t, green))
                        .max()
                        .orElse(0);
                if (better.size() < own.size() && saved > bestSaved) {
                    best = better;
                    bestSaved = saved;
                }
            }
            best.forEach(t -> greenOfTee.put(t, green));
        }
    }

    private static List<SiteElement> teesOf(SiteElement green, Map<SiteElement, SiteElement> greenOfTee) {
        return greenOfTee.entrySet().stream()
                .filter(e -> e.getValue().equals(green))
                .map(Map.Entry::getKey)
                .toList();
    }

    /**
     * Metres of the way from tee to green that lie on no fairway or green, and a tenth of its length, so that of two
     * equal ways the shorter wins.
     */
    private double cost(SiteElement tee, SiteElement green) {
        double length = middle(tee).distanceTo(middle(green));
        return length < SHORTEST_METRES || length > LONGEST_METRES
                ? Double.POSITIVE_INFINITY
                : way(tee, green).cost();
    }

    private record Way(Line line, double cost) {}

    private Way way(SiteElement tee, SiteElement green) {
        return ways.computeIfAbsent(tee.id() + " " + green.id(), k -> bestWay(middle(tee), green));
    }

    /** The straight way, or one bent over a place on a fairway of the green's number where that is better. */
    private Way bestWay(Place tee, SiteElement green) {
        Place cup = middle(green);
        Line straight = new Line(List.of(tee, cup));
        double cost = bareMetres(tee, cup, green) + straight.lengthMetres() / 10;
        Way best = new Way(straight, cost);
        for (SiteElement fairway : fairways) {
            if (number(fairway).isEmpty() || !fits(fairway, green)) {
                continue;
            }
            for (Place bend : inside(fairway.getRegion())) {
                Line bent = new Line(List.of(tee, bend, cup));
                double bentCost =
                        bareMetres(tee, bend, green) + bareMetres(bend, cup, green) + bent.lengthMetres() / 10;
                boolean worthIt = straight.distanceTo(bend) > BEND_METRES && bentCost < cost - BEND_METRES;
                if (worthIt && bentCost < best.cost()) {
                    best = new Way(bent, bentCost);
                }
            }
        }
        return best;
    }

    private static List<Place> inside(Region region) {
        List<Place> out = new ArrayList<>();
        for (double x = region.box().minX(); x < region.box().maxX(); x += BEND_GRID_METRES) {
            for (double y = region.box().minY(); y < region.box().maxY(); y += BEND_GRID_METRES) {
                if (region.contains(x, y)) {
                    out.add(new Place(x, y));
                }
            }
        }
        return out;
    }

    private List<Region> fairwaysOf(SiteElement green) {
        return fairwaysByGreen.computeIfAbsent(
                green.id(),
                id -> fairways.stream()
                        .filter(f -> fits(f, green))
                        .map(SiteElement::getRegion)
                        .toList());
    }

    private double bareMetres(Place from, Place to, SiteElement green) {
        double length = from.distanceTo(to);
        double bearing = from.bearingTo(to);
        double bare = 0;
        for (double d = STEP_METRES / 2; d < length; d += STEP_METRES) {
            Place at = from.along(bearing, d);
            if (fairwaysOf(green).stream().noneMatch(f -> f.contains(at))
                    && !green.getRegion().contains(at)) {
                bare += STEP_METRES;
            }
        }
        return bare;
    }

    /** True if the green has a fairway of its number and the way from the tee leaves it aside. */
    private boolean missesItsFairway(SiteElement tee, SiteElement green) {
        boolean has = fairways.stream()
                .anyMatch(f -> number(f).isPresent() && number(f).equals(number(green)));
        double length = middle(tee).distanceTo(middle(green));
        return has && cost(tee, green) > length - ON_FAIRWAY_METRES + length / 10;
    }

    /** A fairway with a number serves only the greens of that number. */
    private static boolean fits(SiteElement fairway, SiteElement green) {
        OptionalInt f = number(fairway);
        OptionalInt g = number(green);
        return fairway.region().isPresent() && (f.isEmpty() || g.isEmpty() || f.getAsInt() == g.getAsInt());
    }

    private HoleDraft hole(SiteElement green, List<SiteElement> tees) {
        Place cup = middle(green);
        SiteElement back = tees.stream()
                .max(Comparator.comparingDouble((SiteElement t) -> middle(t).distanceTo(cup))
                        .thenComparing(SiteElement::id))
                .orElseThrow();
        records.add(PairOddities.proposedHole(green, back, number(green), tees.size()));
        return new HoleDraft(green.map(), number(green), way(back, green).line());
    }
}
