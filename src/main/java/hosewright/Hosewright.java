package hosewright;

/** The program's door. */
public final class Hosewright {
  private Hosewright() {}

  public static void main(String[] args) {
    System.out.println("hosewright");
  }
}
