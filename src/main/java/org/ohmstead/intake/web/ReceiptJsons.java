package org.ohmstead.intake.web;

import java.util.LinkedHashMap;
import java.util.Map;
import org.ohmstead.intake.ReceiptAddition;
import org.ohmstead.intake.UploadView;
import org.springframework.beans.factory.ObjectProvider;
import org.springframework.stereotype.Component;

/** Writes receipts, after the upload was committed. */
@Component
class ReceiptJsons {

    private final ObjectProvider<ReceiptAddition> additions;

    ReceiptJsons(ObjectProvider<ReceiptAddition> additions) {
        this.additions = additions;
    }

    ReceiptJson of(UploadView upload) {
        return new ReceiptJson(upload, additionsTo(upload));
    }

    private Map<String, Object> additionsTo(UploadView upload) {
        Map<String, Object> added = new LinkedHashMap<>();
        Long stringId = upload.surveyId() == null ? null : upload.stringId();
        if (stringId != null) {
            additions.orderedStream().forEach(addition -> added.put(addition.key(), addition.of(stringId)));
        }
        return added;
    }
}
