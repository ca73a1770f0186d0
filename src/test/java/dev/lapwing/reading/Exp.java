package dev.lapwing.reading;

import java.nio.file.*;
import java.util.*;

/** experiment */
final class Exp {
    static double L2S = Double.parseDouble(System.getProperty("l2s","0.02")), L2W = Double.parseDouble(System.getProperty("l2w","0.06"));
    static boolean WORDS = !System.getProperty("words","1").equals("0");
    public static void main(String[] a) throws Exception {
        LexiconReader r = ContactReaders.withoutWeights(Path.of(a[0]));
        List<LabelledNote> notes = new ArrayList<>();
        for (Path f : ReadingEvaluation.notesIn(Path.of(a[1]))) notes.addAll(LabelledNote.readAll(f));
        Map<String,Integer> ids = new HashMap<>(); List<String> names = new ArrayList<>();
        int n = notes.size(); int[][] x = new int[n][]; double[] y = new double[n]; double[] w = new double[n]; double[] rule=new double[n]; boolean[] any=new boolean[n];
        for (int i=0;i<n;i++) {
            LabelledNote l = notes.get(i);
            NoteCase c = r.study(l.note(), null, l.travelHeight());
            rule[i]=c.judgement().score(); for(Signal g:c.signals()) any[i]|=g.isAny(Things.DECIDING|Things.EVENTS); TreeSet<Integer> f = new TreeSet<>();
            Traits.of(c, t -> f.add(id(ids,names,Traits.name(t))));
            if (WORDS) for (int k=0;k<c.tokens().size;k++) { Word word=c.tokens().words[c.language()][k]; if(word!=null) f.add(id(ids,names,"w:"+c.language()+":"+word.form)); }
            x[i]=f.stream().mapToInt(Integer::intValue).toArray();
            y[i]= l.verdict()==ContactVerdict.CONTACT?1: l.verdict()==ContactVerdict.NONE?0:0.5; w[i]= l.verdict()==ContactVerdict.UNCLEAR?0.3:1;
        }
        int[] df=new int[ids.size()]; for(int[] f:x) for(int t:f) df[t]++;
        for (int i=0;i<n;i++) x[i]=Arrays.stream(x[i]).filter(t->df[t]>=3).toArray();
        int K=10; double[] p=new double[n];
        for(int k=0;k<K;k++){ double[] b=train(x,y,w,ids.size(),names,i-> i%10, k); for(int i=0;i<n;i++) if(i%K==k) p[i]=sig(dot(b,x[i])); }
        report(notes,p,"CV");
        for(double hi: new double[]{.45,.5,.55,.6}) for(double lo: new double[]{.1,.15,.2,.25,.3}) for(int v=0;v<3;v++){ StringBuilder sb=new StringBuilder(); 
          for(String lang: List.of("en","es","fr")){ int[][] m=new int[3][3]; for(int i=0;i<n;i++) if(notes.get(i).language().equals(lang)){ int d= p[i]>=hi?0:p[i]>=lo?1:2; 
             if(v>=1 && rule[i]>=.8 && d==2) d=1; if(v>=1 && !any[i]) d=2; if(v>=2 && rule[i]>=.9&& p[i]>.3) d=0; if(v>=2 && rule[i]<.05 && d==0 && p[i]<.7) d=1;
             m[notes.get(i).verdict().ordinal()][d]++; }
            double c=m[0][0]+m[0][1]+m[0][2],o=m[2][0]+m[2][1]+m[2][2]; sb.append(String.format("  %s c>c %.1f c>n %.1f n>c %.1f n>u %.1f",lang,100*m[0][0]/c,100*m[0][2]/c,100*m[2][0]/o,100*m[2][1]/o)); }
          System.out.printf("v%d hi %.2f lo %.2f %s%n",v,hi,lo,sb); }
        if(a.length>2){ for(int i=0;i<n;i++){ LabelledNote l=notes.get(i); if(l.verdict()==ContactVerdict.CONTACT&&p[i]<0.35||l.verdict()==ContactVerdict.NONE&&p[i]>0.5) System.out.printf("%s %s %.2f [%s] %s%n",l.id(),l.verdict().word().substring(0,1),p[i],l.kind(),l.note().length()>300?l.note().substring(0,300):l.note()); } }
    }
    static void report(List<LabelledNote> notes,double[] p,String t){
        for (String lang : List.of("en","es","fr","all")) {
            double[] c=notesOf(notes,p,lang,ContactVerdict.CONTACT), o=notesOf(notes,p,lang,ContactVerdict.NONE);
            // thresholds: low such that contact->none <=1.5%, high such that none->contact<=4%
            double low=c[(int)Math.floor(c.length*0.015)]; double high=o[(int)Math.ceil(o.length*0.96)-1];
            long rec=Arrays.stream(c).filter(v->v>high).count(); long q=Arrays.stream(o).filter(v->v>=low&&v<=high).count();
            double auc=0; for(double u:c) for(double v:o) auc+= u>v?1:u==v?0.5:0; auc/=c.length*(double)o.length;
            System.out.printf("%s %s AUC %.4f  low %.3f high %.3f recall@4%%FA %.1f%%  questions@1.5%%miss %.1f%%%n",t,lang,auc,low,high,100.0*rec/c.length,100.0*q/o.length);
            for(double[] th: new double[][]{{.08,.5},{.12,.5},{.2,.5},{.2,.6}}) System.out.printf("    th %.2f %.2f: c>c %.1f c>n %.1f n>c %.1f n>u %.1f%n",th[0],th[1],pc(c,th[1],2),pc(c,-1,th[0]),pc(o,th[1],2),pc(o,th[0],th[1]));
        }
    }
    static double pc(double[] v,double from,double to){ return 100.0*Arrays.stream(v).filter(q->q>=from&&q<to).count()/v.length; }
    static double[] notesOf(List<LabelledNote> notes,double[] p,String lang,ContactVerdict v){ double[] r=new double[notes.size()]; int k=0; for(int i=0;i<p.length;i++) if((lang.equals("all")||notes.get(i).language().equals(lang))&&notes.get(i).verdict()==v) r[k++]=p[i]; r=Arrays.copyOf(r,k); Arrays.sort(r); return r; }
    static int id(Map<String,Integer> m,List<String> names,String s){ Integer i=m.get(s); if(i==null){i=m.size();m.put(s,i);names.add(s);} return i; }
    static double dot(double[] b,int[] f){ double s=b[b.length-1]; for(int t:f) s+=b[t]; return s; }
    static double sig(double z){ return 1/(1+Math.exp(-z)); }
    static double[] train(int[][] x,double[] y,double[] w,int d,List<String> names,java.util.function.IntUnaryOperator fold,int out){
        double[] b=new double[d+1],m=new double[d+1],v=new double[d+1]; 
        double[] l2=new double[d+1]; for(int i=0;i<d;i++) l2[i]=names.get(i).startsWith("w:")?L2W:L2S;
        int n=0; for(int i=0;i<x.length;i++) if(fold.applyAsInt(i)!=out) n++;
        for(int it=1;it<=400;it++){ double[] g=new double[d+1];
            for(int i=0;i<x.length;i++) if(fold.applyAsInt(i)!=out){ double e=w[i]*(sig(dot(b,x[i]))-y[i])/n; for(int t:x[i]) g[t]+=e; g[d]+=e; }
            for(int j=0;j<=d;j++){ g[j]+=l2[j]*b[j]/10; m[j]=.9*m[j]+.1*g[j]; v[j]=.999*v[j]+.001*g[j]*g[j]; b[j]-=0.03*(m[j]/(1-Math.pow(.9,it)))/(Math.sqrt(v[j]/(1-Math.pow(.999,it)))+1e-9); } }
        return b; }
}
