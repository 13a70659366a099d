/**
 * What is wrong with what somebody gave, and how it is said.
 *
 * <p>Knows no trade: a field, a value, what is allowed and the nearest right thing are words to it.
 * Every door maps these exceptions to its own answer. Begin with {@link BadInputException}.
 */
package hosewright.problem;
