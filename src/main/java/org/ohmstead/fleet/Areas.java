package org.ohmstead.fleet;

import java.util.List;
import java.util.Optional;
import org.springframework.data.jpa.repository.JpaRepository;

interface Areas extends JpaRepository<Area, Long> {

    Optional<Area> findByCode(String code);

    List<Area> findAllByOrderByCode();
}
