package org.ohmstead.programme.web;

import java.util.List;
import org.ohmstead.access.Access;
import org.ohmstead.access.Permission;
import org.ohmstead.kernel.Refused;
import org.ohmstead.programme.RulePacks;
import org.ohmstead.programme.rules.RulePack;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.PutMapping;
import org.springframework.web.bind.annotation.RequestBody;
import org.springframework.web.bind.annotation.RequestMapping;
import org.springframework.web.bind.annotation.RestController;

/** The rule packs as data. */
@RestController
@RequestMapping("/api/rule-packs")
class PacksResource {

    private final RulePacks packs;
    private final Access access;

    PacksResource(RulePacks packs, Access access) {
        this.packs = packs;
        this.access = access;
    }

    @GetMapping
    List<RulePacks.Listed> all() {
        return packs.all();
    }

    @GetMapping("/{code}")
    RulePacks.Listed latest(@PathVariable String code) {
        return packs.latest(code);
    }

    @GetMapping("/{code}/versions")
    List<RulePack> versions(@PathVariable String code) {
        return packs.versionsOf(code);
    }

    /** A pack of one's own, or its next version. */
    @PutMapping("/{code}")
    RulePack save(@PathVariable String code, @RequestBody RulePack wished) {
        access.require(Permission.EDIT_REGISTER);
        if (!code.equals(wished.code())) {
            throw new Refused("The address names the pack \"" + code + "\", the body \"" + wished.code() + "\".");
        }
        return packs.save(wished);
    }
}
