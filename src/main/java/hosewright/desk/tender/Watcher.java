package hosewright.desk.tender;

/** Watches a tender being priced, which may take hours. */
public interface Watcher {

  /**
   * Work begins.
   *
   * @param before jobs that an earlier run had done
   * @param jobs how many there are in all
   */
  void begins(int before, int jobs);

  /**
   * So many jobs are done.
   *
   * @param jobs those of an earlier run with them
   */
  void done(int jobs);

  /** No more jobs are worked on, whether all are done or not. */
  void ends();
}
