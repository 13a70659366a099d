package hosewright.fault;

import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.MappedByteBuffer;
import java.nio.channels.FileChannel;
import java.nio.channels.FileLock;
import java.nio.channels.ReadableByteChannel;
import java.nio.channels.WritableByteChannel;

/** An open file of a folder under test, which may turn read-only while it is written. */
final class ViewedChannel extends FileChannel {
  private final FileChannel real;
  private final TurningFolder folder;
  private final String file;

  ViewedChannel(FileChannel real, TurningFolder folder, String file) {
    this.real = real;
    this.folder = folder;
    this.file = file;
  }

  @Override
  public int write(ByteBuffer bytes) throws IOException {
    folder.write(file);
    return real.write(bytes);
  }

  @Override
  public int write(ByteBuffer bytes, long at) throws IOException {
    folder.write(file);
    return real.write(bytes, at);
  }

  @Override
  public long write(ByteBuffer[] bytes, int from, int length) throws IOException {
    folder.write(file);
    return real.write(bytes, from, length);
  }

  @Override
  public FileChannel truncate(long size) throws IOException {
    folder.write(file);
    real.truncate(size);
    return this;
  }

  @Override
  public void force(boolean metadata) throws IOException {
    folder.write(file);
    real.force(metadata);
  }

  @Override
  public long transferFrom(ReadableByteChannel from, long at, long count) throws IOException {
    folder.write(file);
    return real.transferFrom(from, at, count);
  }

  @Override
  public long transferTo(long at, long count, WritableByteChannel to) throws IOException {
    return real.transferTo(at, count, to);
  }

  @Override
  public int read(ByteBuffer bytes) throws IOException {
    return real.read(bytes);
  }

  @Override
  public int read(ByteBuffer bytes, long at) throws IOException {
    return real.read(bytes, at);
  }

  @Override
  public long read(ByteBuffer[] bytes, int from, int length) throws IOException {
    return real.read(bytes, from, length);
  }

  @Override
  public long position() throws IOException {
    return real.position();
  }

  @Override
  public FileChannel position(long at) throws IOException {
    real.position(at);
    return this;
  }

  @Override
  public long size() throws IOException {
    return real.size();
  }

  @Override
  public MappedByteBuffer map(MapMode mode, long at, long size) throws IOException {
    return real.map(mode, at, size);
  }

  @Override
  public FileLock lock(long at, long size, boolean shared) throws IOException {
    return real.lock(at, size, shared);
  }

  @Override
  public FileLock tryLock(long at, long size, boolean shared) throws IOException {
    return real.tryLock(at, size, shared);
  }

  @Override
  protected void implCloseChannel() throws IOException {
    real.close();
  }
}
