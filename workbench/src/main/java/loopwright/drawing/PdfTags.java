package loopwright.drawing;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.apache.pdfbox.cos.COSArray;
import org.apache.pdfbox.cos.COSDictionary;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.common.COSObjectable;
import org.apache.pdfbox.pdmodel.common.PDNumberTreeNode;
import org.apache.pdfbox.pdmodel.documentinterchange.logicalstructure.PDMarkInfo;
import org.apache.pdfbox.pdmodel.documentinterchange.logicalstructure.PDParentTreeValue;
import org.apache.pdfbox.pdmodel.documentinterchange.logicalstructure.PDStructureElement;
import org.apache.pdfbox.pdmodel.documentinterchange.logicalstructure.PDStructureTreeRoot;
import org.apache.pdfbox.pdmodel.documentinterchange.taggedpdf.PDTableAttributeObject;
import org.jspecify.annotations.Nullable;

/** The structure tree of a PDF: what is a heading, a paragraph, a figure, a table, and in which order it is read. */
final class PdfTags {
    private final PDDocument document;
    private final PDStructureTreeRoot root = new PDStructureTreeRoot();
    private final PDStructureElement whole;
    private final Map<Integer, COSObjectable> parents = new HashMap<>();
    private final List<Part> parts = new ArrayList<>();
    private COSArray content = new COSArray();
    private @Nullable PDPage page;

    private record Part(int order, PDStructureElement element) {}

    PdfTags(PDDocument document) {
        this.document = document;
        whole = new PDStructureElement("Document", root);
        root.appendKid(whole);
    }

    /** What follows is on this page. */
    void on(PDPage sheet) {
        page = sheet;
        content = new COSArray();
        sheet.setStructParents(parents.size());
        parents.put(parents.size(), new PDParentTreeValue(content));
        sheet.getCOSObject().setItem(COSName.getPDFName("Tabs"), COSName.S);
    }

    PDStructureElement open(Mark.Tagged mark, @Nullable PDStructureElement parent) {
        PDStructureElement element = new PDStructureElement(mark.tag().pdf(), parent == null ? whole : parent);
        if (!mark.words().isEmpty()) {
            if (mark.tag() == Mark.Tag.FIGURE) {
                element.setAlternateDescription(mark.words());
            } else {
                element.setTitle(mark.words());
            }
        }
        if (mark.tag() == Mark.Tag.HEAD_CELL) {
            PDTableAttributeObject attribute = new PDTableAttributeObject();
            attribute.setScope(PDTableAttributeObject.SCOPE_COLUMN);
            element.addAttribute(attribute);
        }
        if (parent == null) {
            parts.add(new Part(mark.order(), element));
        } else {
            parent.appendKid(element);
        }
        return element;
    }

    /** The number under which an element's content is marked on the page. */
    int number(PDStructureElement element) {
        element.setPage(page);
        element.appendKid(content.size());
        content.add(element.getCOSObject());
        return content.size() - 1;
    }

    void finish() {
        parts.stream().sorted(Comparator.comparingInt(Part::order)).forEach(p -> whole.appendKid(p.element()));
        PDNumberTreeNode tree = new PDNumberTreeNode(new COSDictionary(), PDParentTreeValue.class);
        tree.setNumbers(parents);
        root.setParentTree(tree);
        root.setParentTreeNextKey(parents.size());
        document.getDocumentCatalog().setStructureTreeRoot(root);
        PDMarkInfo info = new PDMarkInfo();
        info.setMarked(true);
        document.getDocumentCatalog().setMarkInfo(info);
    }
}
