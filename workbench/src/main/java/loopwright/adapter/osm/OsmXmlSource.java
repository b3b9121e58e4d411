package loopwright.adapter.osm;

import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import javax.xml.stream.XMLInputFactory;
import javax.xml.stream.XMLStreamConstants;
import javax.xml.stream.XMLStreamException;
import javax.xml.stream.XMLStreamReader;
import loopwright.action.UserFault;
import org.jspecify.annotations.Nullable;

/**
 * OSM XML as a stream. Entities and document types are refused, so a file cannot reach outside itself or unfold into
 * more than it is; objects with unreadable numbers are passed over and counted as absent.
 */
final class OsmXmlSource implements OsmSource {
    private final Path file;

    OsmXmlSource(Path file) {
        this.file = file;
    }

    @Override
    public void visit(OsmVisitor visitor) {
        XMLInputFactory factory = XMLInputFactory.newDefaultFactory();
        factory.setProperty(XMLInputFactory.SUPPORT_DTD, false);
        factory.setProperty(XMLInputFactory.IS_SUPPORTING_EXTERNAL_ENTITIES, false);
        int line = 1;
        try (InputStream in = Files.newInputStream(file)) {
            XMLStreamReader xml = factory.createXMLStreamReader(XmlText.of(in));
            Walk walk = new Walk(visitor);
            boolean rootSeen = false;
            while (xml.hasNext()) {
                int event = xml.next();
                line = xml.getLocation().getLineNumber();
                if (event == XMLStreamConstants.START_ELEMENT) {
                    if (!rootSeen && !xml.getLocalName().equals("osm")) {
                        throw new UserFault(file + " is XML but its outermost element is <" + xml.getLocalName()
                                + ">, not <osm>; export the course as OSM XML.");
                    }
                    rootSeen = true;
                    walk.start(xml);
                } else if (event == XMLStreamConstants.END_ELEMENT) {
                    walk.end(xml.getLocalName());
                }
            }
        } catch (XMLStreamException e) {
            int at = e.getLocation() == null ? line : e.getLocation().getLineNumber();
            throw new UserFault(
                    file + ", line " + at + ": the XML breaks off or is malformed there; export or download the file"
                            + " again.",
                    e);
        } catch (IOException e) {
            throw new UserFault(file + " cannot be read: " + e.getMessage() + ".", e);
        }
    }

    /** The object being read; one at a time is open. */
    private static final class Walk {
        private final OsmVisitor visitor;
        private @Nullable Long id;
        private @Nullable Integer latitude;
        private @Nullable Integer longitude;
        private Map<String, String> tags = new TreeMap<>();
        private List<Long> nodes = new ArrayList<>();
        private List<OsmVisitor.Member> members = new ArrayList<>();

        Walk(OsmVisitor visitor) {
            this.visitor = visitor;
        }

        void start(XMLStreamReader xml) {
            switch (xml.getLocalName()) {
                case "node" -> {
                    open(xml);
                    latitude = OsmNumbers.degreesE7(attribute(xml, "lat"), 90);
                    longitude = OsmNumbers.degreesE7(attribute(xml, "lon"), 180);
                }
                case "way", "relation" -> open(xml);
                case "tag" -> tags.put(attribute(xml, "k"), attribute(xml, "v"));
                case "nd" -> {
                    Long ref = OsmNumbers.id(attribute(xml, "ref"));
                    if (ref != null) {
                        nodes.add(ref);
                    }
                }
                case "member" -> {
                    Long ref = OsmNumbers.id(attribute(xml, "ref"));
                    if (ref != null) {
                        members.add(new OsmVisitor.Member(attribute(xml, "type"), ref, attribute(xml, "role")));
                    }
                }
                default -> {}
            }
        }

        private void open(XMLStreamReader xml) {
            id = "delete".equals(attribute(xml, "action")) || "false".equals(attribute(xml, "visible"))
                    ? null
                    : OsmNumbers.id(attribute(xml, "id"));
            latitude = null;
            longitude = null;
            tags = new TreeMap<>();
            nodes = new ArrayList<>();
            members = new ArrayList<>();
        }

        void end(String name) {
            Long open = id;
            if (open == null) {
                return;
            }
            switch (name) {
                case "node" -> {
                    Integer lat = latitude;
                    Integer lon = longitude;
                    if (lat != null && lon != null) {
                        visitor.node(open, lat, lon, tags);
                    }
                }
                case "way" ->
                    visitor.way(open, nodes.stream().mapToLong(Long::longValue).toArray(), tags);
                case "relation" -> visitor.relation(open, members, tags);
                default -> {}
            }
        }

        private static String attribute(XMLStreamReader xml, String name) {
            String value = xml.getAttributeValue(null, name);
            return value == null ? "" : value;
        }
    }
}
