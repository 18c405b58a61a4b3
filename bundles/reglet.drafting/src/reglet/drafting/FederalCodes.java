package reglet.drafting;

import java.util.Map;

import reglet.model.RegisterItem;

/**
 * Submittal descriptions SD-01 to SD-11 as the open federal guide specifications number them (UFGS 01 33 00): preconstruction,
 * shop drawings, product data, samples, design data, test reports, certificates, manufacturer's instructions, manufacturer's field
 * reports, operation and maintenance data, closeout. The numbers were read in that section; which of our items belongs to which is
 * from memory and common practice, and a person may have to move one.
 */
final class FederalCodes {
    private static final Map<String, String> BY_WHAT = Map.ofEntries(Map.entry("shop drawing", "SD-02"), Map.entry("product data", "SD-03"),
        Map.entry("sample", "SD-04"), Map.entry("mock-up", "SD-04"), Map.entry("calculation", "SD-05"), Map.entry("test report", "SD-06"),
        Map.entry("evaluation report", "SD-06"), Map.entry("certificate", "SD-07"), Map.entry("compatibility statement", "SD-07"),
        Map.entry("qualification statement", "SD-07"), Map.entry("instructions", "SD-08"), Map.entry("field report", "SD-09"),
        Map.entry("maintenance data", "SD-10"), Map.entry("exposure control plan", "SD-01"), Map.entry("work plan", "SD-01"));

    private FederalCodes() {
    }

    /** The code of an item; "" for something that the scheme has no description for. */
    static String of(RegisterItem item) {
        if (item.sort() == RegisterItem.Sort.PRECONSTRUCTION) {
            return "SD-01";
        }
        if (item.sort() == RegisterItem.Sort.DELEGATED) {
            return item.sends().equals("shop drawing") ? "SD-02" : "SD-05";
        }
        return BY_WHAT.getOrDefault(item.sends(), item.kind() == RegisterItem.Kind.CLOSEOUT ? "SD-11" : "");
    }
}
