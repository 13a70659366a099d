/**
 * What is bought for a line: whether an item may be had, how many, at what price, with which
 * gaskets and accessories.
 *
 * <p>Knows nothing of water. Begin with {@link Billing}; {@link PriceFloor} bounds what is still
 * open.
 */
package hosewright.line.goods;
