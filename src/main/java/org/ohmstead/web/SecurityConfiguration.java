package org.ohmstead.web;

import org.ohmstead.access.ApiTokens;
import org.springframework.context.annotation.Bean;
import org.springframework.context.annotation.Configuration;
import org.springframework.security.config.annotation.web.builders.HttpSecurity;
import org.springframework.security.web.SecurityFilterChain;
import org.springframework.security.web.authentication.LoginUrlAuthenticationEntryPoint;
import org.springframework.security.web.authentication.UsernamePasswordAuthenticationFilter;
import org.springframework.security.web.servlet.util.matcher.PathPatternRequestMatcher;
import org.springframework.security.web.util.matcher.AndRequestMatcher;
import org.springframework.security.web.util.matcher.OrRequestMatcher;
import org.springframework.security.web.util.matcher.RequestMatcher;

/**
 * Who gets in at all: everybody must be signed in but for the door itself. What a person may do inside is decided by
 * {@link org.ohmstead.access.Access} alone.
 */
@Configuration(proxyBeanMethods = false)
class SecurityConfiguration {

    private static final String CONTENT_SECURITY_POLICY = "default-src 'none'; script-src 'self'; style-src 'self';"
            + " img-src 'self' data:; font-src 'self'; connect-src 'self'; worker-src 'self'; form-action 'self'; base-uri 'none';"
            + " frame-ancestors 'none'";

    private static final String[] OPEN = {
        "/sign-in",
        "/welcome/**",
        // the secret in the address is the key
        "/calendar/*",
        "/css/**",
        "/fonts/**",
        "/js/**",
        "/images/**",
        "/webjars/**",
        "/favicon.ico",
        "/service-worker.js",
        "/error",
        "/actuator/health/**"
    };

    /** A token that got into wrong hands makes no other one and changes nobody's access: that takes a password. */
    private static final RequestMatcher BEYOND_TOKENS = new AndRequestMatcher(
            BearerTokens::carriesToken,
            new OrRequestMatcher(
                    PathPatternRequestMatcher.pathPattern("/account/**"),
                    PathPatternRequestMatcher.pathPattern("/administration/**")));

    @Bean
    SecurityFilterChain everything(HttpSecurity http, ApiTokens tokens) throws Exception {
        RequestMatcher api = PathPatternRequestMatcher.pathPattern("/api/**");
        return http.authorizeHttpRequests(requests -> requests.requestMatchers(OPEN)
                        .permitAll()
                        .requestMatchers(BEYOND_TOKENS)
                        .denyAll()
                        .anyRequest()
                        .authenticated())
                .formLogin(form ->
                        form.loginPage("/sign-in").defaultSuccessUrl("/").permitAll())
                .logout(logout -> logout.logoutUrl("/sign-out").logoutSuccessUrl("/sign-in?out"))
                .csrf(csrf -> csrf.ignoringRequestMatchers(BearerTokens::carriesToken))
                .addFilterBefore(new BearerTokens(tokens), UsernamePasswordAuthenticationFilter.class)
                .exceptionHandling(refusal -> refusal.defaultAuthenticationEntryPointFor(new ApiEntryPoint(), api)
                        .defaultAuthenticationEntryPointFor(
                                new LoginUrlAuthenticationEntryPoint("/sign-in"), request -> true)
                        .defaultAccessDeniedHandlerFor(new ApiDenial(), api))
                .headers(headers -> headers.contentSecurityPolicy(
                                policy -> policy.policyDirectives(CONTENT_SECURITY_POLICY))
                        .referrerPolicy(referrer -> referrer.policy(
                                org.springframework.security.web.header.writers.ReferrerPolicyHeaderWriter
                                        .ReferrerPolicy.SAME_ORIGIN)))
                .build();
    }
}
