package org.ohmstead.intake.web;

import java.util.Map;
import java.util.UUID;
import org.ohmstead.access.Access;
import org.ohmstead.access.Permission;
import org.ohmstead.intake.Bench;
import org.ohmstead.intake.Offer;
import org.ohmstead.intake.RepairBench;
import org.springframework.web.bind.annotation.DeleteMapping;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RequestBody;
import org.springframework.web.bind.annotation.RequestMapping;
import org.springframework.web.bind.annotation.RestController;

/** Repairs of held surveys: looked at, tried, made, taken back, and the survey stored when nothing holds it any more. */
@RestController
@RequestMapping("/api/uploads/{id}")
class RepairResource {

    private final RepairBench bench;
    private final StepForm form;
    private final ReceiptJsons receipts;
    private final Access access;

    RepairResource(RepairBench bench, StepForm form, ReceiptJsons receipts, Access access) {
        this.bench = bench;
        this.form = form;
        this.receipts = receipts;
        this.access = access;
    }

    @GetMapping("/repairs")
    Bench look(@PathVariable UUID id) {
        return bench.look(id);
    }

    /** A step with "kind", its own arguments, and "reason" where a single value is put right. */
    @PostMapping("/repairs")
    ReceiptJson repair(@PathVariable UUID id, @RequestBody Map<String, Object> asked) {
        access.require(Permission.HAND_IN_SURVEYS);
        return receipts.of(bench.repair(id, form.step(asked), StepForm.reason(asked)));
    }

    @PostMapping("/repairs/preview")
    Offer preview(@PathVariable UUID id, @RequestBody Map<String, Object> asked) {
        return bench.preview(id, form.step(asked));
    }

    @DeleteMapping("/repairs/last")
    ReceiptJson takeBack(@PathVariable UUID id) {
        return receipts.of(bench.takeBack(id));
    }

    @PostMapping("/store")
    ReceiptJson store(@PathVariable UUID id) {
        return receipts.of(bench.store(id));
    }
}
