package org.ohmstead.support;

import java.util.Locale;
import java.util.Map;
import org.ohmstead.web.Shell;
import org.springframework.context.support.GenericApplicationContext;
import org.springframework.format.support.DefaultFormattingConversionService;
import org.springframework.mock.web.MockHttpServletRequest;
import org.springframework.mock.web.MockHttpServletResponse;
import org.springframework.mock.web.MockServletContext;
import org.springframework.web.context.support.GenericWebApplicationContext;
import org.thymeleaf.context.WebContext;
import org.thymeleaf.spring6.SpringTemplateEngine;
import org.thymeleaf.spring6.expression.ThymeleafEvaluationContext;
import org.thymeleaf.spring6.templateresolver.SpringResourceTemplateResolver;
import org.thymeleaf.web.servlet.JakartaServletWebApplication;

/** Renders a template as the service would, without the service: quick enough to look at every state of a page. */
public final class TemplateRendering {

    private final GenericWebApplicationContext context;
    private final MockServletContext servletContext = new MockServletContext();
    private final SpringTemplateEngine engine = new SpringTemplateEngine();

    private final boolean demo;

    public TemplateRendering(boolean demo) {
        this.demo = demo;
        context = new GenericWebApplicationContext(servletContext);
        context.refresh();
        engine.setTemplateResolver(resolver(context));
    }

    private static SpringResourceTemplateResolver resolver(GenericApplicationContext context) {
        var resolver = new SpringResourceTemplateResolver();
        resolver.setApplicationContext(context);
        resolver.setPrefix("classpath:/templates/");
        resolver.setSuffix(".html");
        resolver.setCharacterEncoding("UTF-8");
        return resolver;
    }

    /** The page at an address; parts that depend on who is signed in are shown as they stand in the template. */
    public String render(String template, String address, Map<String, ?> model) {
        var request = new MockHttpServletRequest(servletContext, "GET", address);
        var response = new MockHttpServletResponse();
        var exchange =
                JakartaServletWebApplication.buildApplication(servletContext).buildExchange(request, response);
        var variables = new java.util.HashMap<String, Object>(model);
        variables.put("shell", Shell.of(address, demo));
        variables.put(
                ThymeleafEvaluationContext.THYMELEAF_EVALUATION_CONTEXT_CONTEXT_VARIABLE_NAME,
                new ThymeleafEvaluationContext(context, new DefaultFormattingConversionService()));
        return engine.process(template, new WebContext(exchange, Locale.UK, variables));
    }
}
