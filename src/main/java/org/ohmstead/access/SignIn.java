package org.ohmstead.access;

import org.springframework.context.annotation.Bean;
import org.springframework.context.annotation.Configuration;
import org.springframework.security.core.userdetails.UserDetailsService;
import org.springframework.security.core.userdetails.UsernameNotFoundException;
import org.springframework.security.crypto.factory.PasswordEncoderFactories;
import org.springframework.security.crypto.password.PasswordEncoder;

/** What the form login needs to know of people. */
@Configuration(proxyBeanMethods = false)
class SignIn {

    @Bean
    PasswordEncoder passwordEncoder() {
        return PasswordEncoderFactories.createDelegatingPasswordEncoder();
    }

    @Bean
    UserDetailsService signedInUsers(People people) {
        return username -> people.credentials(username).orElseThrow(() -> new UsernameNotFoundException(username));
    }
}
