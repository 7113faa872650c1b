package org.ohmstead.intake.web;

import com.fasterxml.jackson.annotation.JsonAnyGetter;
import com.fasterxml.jackson.annotation.JsonUnwrapped;
import java.util.Map;
import org.ohmstead.intake.UploadView;

/** The receipt, together with what later modules add to it under keys of their own. */
record ReceiptJson(
        @JsonUnwrapped UploadView upload, @JsonAnyGetter Map<String, Object> additions) {}
