package org.ohmstead.web;

import java.util.Map;
import org.springframework.boot.web.error.ErrorAttributeOptions;
import org.springframework.boot.webmvc.error.DefaultErrorAttributes;
import org.springframework.stereotype.Component;
import org.springframework.web.context.request.WebRequest;

/** Tells people the sentence of a refusal, and nothing of what broke inside the service. */
@Component
class ErrorSentences extends DefaultErrorAttributes {

    @Override
    public Map<String, Object> getErrorAttributes(WebRequest request, ErrorAttributeOptions options) {
        Map<String, Object> attributes = super.getErrorAttributes(request, options);
        if (attributes.get("status") instanceof Integer status && status >= 500) {
            attributes.remove("message");
        }
        return attributes;
    }
}
