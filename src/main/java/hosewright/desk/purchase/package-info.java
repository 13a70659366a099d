/**
 * What is bought together: several jobs and parts lists in one quote, read, planned and made.
 *
 * <p>Begin with {@link MakePurchase}.
 */
package hosewright.desk.purchase;
