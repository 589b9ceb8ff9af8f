package readback.assistant.report;

import java.io.StringReader;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import javax.xml.parsers.DocumentBuilderFactory;
import org.w3c.dom.Document;
import org.w3c.dom.Element;
import org.w3c.dom.NodeList;
import org.xml.sax.InputSource;
import readback.assistant.record.RecordUnavailableException;
import readback.assistant.record.RecordedSession;
import readback.assistant.record.RemarkFile;
import readback.assistant.recorded.Scripted;
import readback.prompts.text.Language;

/** Reports of scripted sessions, and pages read by a parser that is not ours. */
final class ReportPages {

    private ReportPages() {}

    static JobReport report(Scripted script, Path sessions) throws RecordUnavailableException {
        return report(script.readFrom(sessions));
    }

    static JobReport report(RecordedSession session) throws RecordUnavailableException {
        return JobReport.of(Scripted.dialogue(), Scripted.wording(), Scripted.parts(), session, RemarkFile.on(session));
    }

    static String page(JobReport report) {
        return ReportPage.of(report, Language.english(), Scripted.START.plusSeconds(86400));
    }

    /** The page as a tree; it is written so that an XML parser understands it too. */
    static Document tree(String page) throws Exception {
        String xml = page.substring(page.indexOf('\n') + 1);
        return DocumentBuilderFactory.newInstance().newDocumentBuilder().parse(new InputSource(new StringReader(xml)));
    }

    static List<Element> elements(Document page, String name) {
        NodeList nodes = page.getElementsByTagName(name);
        List<Element> elements = new ArrayList<>();
        for (int i = 0; i < nodes.getLength(); i++) {
            elements.add((Element) nodes.item(i));
        }
        return elements;
    }

    static List<String> texts(Document page, String name) {
        return elements(page, name).stream().map(Element::getTextContent).toList();
    }
}
