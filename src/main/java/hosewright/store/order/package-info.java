/**
 * Orders, stock and suppliers' answers kept in the books.
 *
 * <p>Two who want the same piece take turns here. Begin with {@link StoredOrders}.
 */
package hosewright.store.order;
