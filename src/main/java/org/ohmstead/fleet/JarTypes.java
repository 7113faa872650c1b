package org.ohmstead.fleet;

import java.util.List;
import java.util.Optional;
import org.springframework.data.jpa.repository.JpaRepository;

interface JarTypes extends JpaRepository<JarType, Long> {

    Optional<JarType> findByCode(String code);

    List<JarType> findAllByOrderByCode();
}
