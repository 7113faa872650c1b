package org.ohmstead.reports.render;

import java.util.LinkedHashMap;
import java.util.Map;
import org.apache.pdfbox.cos.COSArray;
import org.apache.pdfbox.cos.COSDictionary;
import org.apache.pdfbox.cos.COSInteger;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.documentinterchange.logicalstructure.PDMarkInfo;
import org.apache.pdfbox.pdmodel.documentinterchange.logicalstructure.PDMarkedContentReference;
import org.apache.pdfbox.pdmodel.documentinterchange.logicalstructure.PDStructureElement;
import org.apache.pdfbox.pdmodel.documentinterchange.logicalstructure.PDStructureTreeRoot;
import org.apache.pdfbox.pdmodel.documentinterchange.taggedpdf.PDTableAttributeObject;
import org.apache.pdfbox.pdmodel.documentinterchange.taggedpdf.StandardStructureTypes;

/** What each piece of writing on the pages is, for programs that read them aloud (ISO 32000-1, 14.7 and 14.8). */
final class PdfTags {

    private final PDStructureTreeRoot root = new PDStructureTreeRoot();
    private final PDStructureElement whole = new PDStructureElement(StandardStructureTypes.DOCUMENT, root);

    /** The pieces of each page in the order of their numbers. */
    private final Map<PDPage, COSArray> pieces = new LinkedHashMap<>();

    PdfTags(PDDocument document) {
        PDMarkInfo marked = new PDMarkInfo();
        marked.setMarked(true);
        document.getDocumentCatalog().setMarkInfo(marked);
        document.getDocumentCatalog().setStructureTreeRoot(root);
        root.appendKid(whole);
    }

    PDStructureElement add(String type) {
        return add(whole, type);
    }

    PDStructureElement add(PDStructureElement parent, String type) {
        PDStructureElement element = new PDStructureElement(type, parent);
        parent.appendKid(element);
        return element;
    }

    /** A heading cell, of its column or of its row. */
    PDStructureElement heading(PDStructureElement row, String scope) {
        PDStructureElement element = add(row, StandardStructureTypes.TH);
        PDTableAttributeObject attributes = new PDTableAttributeObject();
        attributes.setScope(scope);
        element.addAttribute(attributes);
        return element;
    }

    /** @return the number by which the page names the piece */
    int piece(PDPage page, PDStructureElement element) {
        COSArray ofPage = pieces.computeIfAbsent(page, first -> {
            page.setStructParents(pieces.size());
            return new COSArray();
        });
        int number = ofPage.size();
        ofPage.add(element.getCOSObject());
        if (element.getPage() == null) {
            element.setPage(page);
            element.appendKid(number);
        } else {
            PDMarkedContentReference further = new PDMarkedContentReference();
            further.setPage(page);
            further.setMCID(number);
            element.appendKid(further);
        }
        return number;
    }

    /** Writes down which piece of which page belongs to what. */
    void finish() {
        COSArray numbers = new COSArray();
        pieces.forEach((page, ofPage) -> {
            numbers.add(COSInteger.get(page.getStructParents()));
            numbers.add(ofPage);
        });
        COSDictionary tree = new COSDictionary();
        tree.setItem(COSName.NUMS, numbers);
        root.getCOSObject().setItem(COSName.PARENT_TREE, tree);
        root.setParentTreeNextKey(pieces.size());
    }
}
