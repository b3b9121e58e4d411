package loopwright.drawing;

import java.awt.color.ColorSpace;
import java.awt.color.ICC_Profile;
import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import org.apache.pdfbox.pdfwriter.compress.CompressParameters;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDDocumentCatalog;
import org.apache.pdfbox.pdmodel.common.PDMetadata;
import org.apache.pdfbox.pdmodel.font.PDType0Font;
import org.apache.pdfbox.pdmodel.graphics.color.PDOutputIntent;
import org.apache.pdfbox.pdmodel.interactive.viewerpreferences.PDViewerPreferences;

/**
 * Drawings as one PDF: vectors at exact size, letters as text with the typefaces embedded, tagged in reading order, colours
 * with their profile (ISO 19005-1, PDF/A-1). No date and no random number goes in, so the same drawings give the same
 * bytes.
 */
public final class PdfFile {
    private static final long DOCUMENT_ID = 79;
    private static final float VERSION = 1.4f;

    private PdfFile() {}

    /** Pictures on their own ground, for the screen. */
    public static byte[] of(String title, List<Drawing> pages) {
        return write(title, pages, false);
    }

    /** Pages for a printer: the ground is bare paper, and both sides are printed, turned over the short edge. */
    public static byte[] forPrinter(String title, List<Drawing> pages) {
        return write(title, pages, true);
    }

    private static byte[] write(String title, List<Drawing> pages, boolean barePaper) {
        try (PDDocument document = new PDDocument();
                ByteArrayOutputStream out = new ByteArrayOutputStream()) {
            describe(document, title, barePaper);
            Map<Face, PDType0Font> fonts = fonts(document);
            PdfTags tags = new PdfTags(document);
            for (Drawing drawing : pages) {
                PdfPage.add(document, fonts, tags, drawing, barePaper);
            }
            tags.finish();
            document.save(out, CompressParameters.NO_COMPRESSION);
            return out.toByteArray();
        } catch (IOException e) {
            throw new IllegalStateException("a picture could not be encoded in memory", e);
        }
    }

    private static void describe(PDDocument document, String title, boolean forPrinter) throws IOException {
        document.setDocumentId(DOCUMENT_ID);
        document.setVersion(VERSION);
        document.getDocumentInformation().setTitle(title);
        PDDocumentCatalog catalog = document.getDocumentCatalog();
        catalog.setLanguage("en");
        PDViewerPreferences preferences = new PDViewerPreferences(new org.apache.pdfbox.cos.COSDictionary());
        preferences.setDisplayDocTitle(true);
        if (forPrinter) {
            preferences.setDuplex(PDViewerPreferences.DUPLEX.DuplexFlipShortEdge);
            preferences.setPrintScaling(PDViewerPreferences.PRINT_SCALING.None);
        }
        catalog.setViewerPreferences(preferences);
        PDMetadata metadata = new PDMetadata(
                document, new ByteArrayInputStream(metadata(title).getBytes(StandardCharsets.UTF_8)));
        catalog.setMetadata(metadata);
        ICC_Profile profile = ICC_Profile.getInstance(ColorSpace.CS_sRGB);
        PDOutputIntent intent = new PDOutputIntent(document, new ByteArrayInputStream(profile.getData()));
        intent.setInfo("sRGB IEC61966-2.1");
        intent.setOutputCondition("sRGB IEC61966-2.1");
        intent.setOutputConditionIdentifier("sRGB IEC61966-2.1");
        intent.setRegistryName("http://www.color.org");
        catalog.addOutputIntent(intent);
    }

    private static String metadata(String title) {
        return "<?xpacket begin=\"\uFEFF\" id=\"W5M0MpCehiHzreSzNTczkc9d\"?>\n"
                + "<x:xmpmeta xmlns:x=\"adobe:ns:meta/\">\n"
                + "<rdf:RDF xmlns:rdf=\"http://www.w3.org/1999/02/22-rdf-syntax-ns#\">\n"
                + "<rdf:Description rdf:about=\"\" xmlns:dc=\"http://purl.org/dc/elements/1.1/\">\n"
                + "<dc:title><rdf:Alt><rdf:li xml:lang=\"x-default\">" + SvgPage.escaped(title)
                + "</rdf:li></rdf:Alt></dc:title>\n</rdf:Description>\n"
                + "<rdf:Description rdf:about=\"\" xmlns:pdfaid=\"http://www.aiim.org/pdfa/ns/id/\">\n"
                + "<pdfaid:part>1</pdfaid:part>\n<pdfaid:conformance>A</pdfaid:conformance>\n</rdf:Description>\n"
                + "</rdf:RDF>\n</x:xmpmeta>\n<?xpacket end=\"r\"?>";
    }

    private static Map<Face, PDType0Font> fonts(PDDocument document) throws IOException {
        Map<Face, PDType0Font> fonts = new EnumMap<>(Face.class);
        for (Face face : Face.values()) {
            try (InputStream in = Typeface.file(face)) {
                fonts.put(face, PDType0Font.load(document, in, true));
            }
        }
        return fonts;
    }
}
