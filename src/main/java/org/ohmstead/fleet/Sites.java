package org.ohmstead.fleet;

import java.util.List;
import java.util.Optional;
import org.springframework.data.jpa.repository.JpaRepository;
import org.springframework.data.jpa.repository.Query;

interface Sites extends JpaRepository<Site, Long> {

    Optional<Site> findByCode(String code);

    @Query("select s from Site s join fetch s.area order by s.code")
    List<Site> allWithArea();

    boolean existsByAreaIdAndRetiredOnIsNull(long areaId);
}
