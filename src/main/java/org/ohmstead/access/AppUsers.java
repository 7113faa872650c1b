package org.ohmstead.access;

import java.util.List;
import java.util.Optional;
import org.springframework.data.repository.Repository;

interface AppUsers extends Repository<AppUser, Long> {

    AppUser save(AppUser user);

    Optional<AppUser> findByUsername(String username);

    Optional<AppUser> findById(long id);

    List<AppUser> findAllByOrderByUsername();

    boolean existsByPasswordHashIsNotNull();
}
