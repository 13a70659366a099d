package hosewright.catalogue;

/** Somebody the dealer buys from. */
public record Supplier(String code, String name, int leadDays) {}
