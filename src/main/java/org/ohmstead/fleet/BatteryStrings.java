package org.ohmstead.fleet;

import java.util.List;
import java.util.Optional;
import org.springframework.data.jpa.repository.JpaRepository;
import org.springframework.data.jpa.repository.Query;

interface BatteryStrings extends JpaRepository<BatteryString, Long> {

    String WITH_ALL = "select s from BatteryString s join fetch s.site t join fetch t.area join fetch s.jarType ";

    @Query(WITH_ALL + "order by t.code, s.name")
    List<BatteryString> allWithSite();

    @Query(WITH_ALL + "where array_contains(:ids, s.id) order by t.code, s.name")
    List<BatteryString> allWithSite(Long[] ids);

    @Query(WITH_ALL + "where s.id = :id")
    Optional<BatteryString> withSite(long id);

    @Query(WITH_ALL + "where t.code = :siteCode and s.name = :name")
    Optional<BatteryString> named(String siteCode, String name);

    @Query(WITH_ALL + "where t.id = :siteId order by s.name")
    List<BatteryString> ofSite(long siteId);

    @Query("select s.id from BatteryString s where s.jarType.id = :jarTypeId and s.retiredOn is null")
    List<Long> idsByJarType(long jarTypeId);
}
