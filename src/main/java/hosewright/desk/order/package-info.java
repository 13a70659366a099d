/** What is done with orders: raised, bought for, received, shipped, cancelled, shown. */
package hosewright.desk.order;
